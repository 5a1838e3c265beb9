import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, emptyBlock, emptyEpisode, linesOf, newLine, type Block, type Episode, type LineKind } from "../../../../shared/episode";
import { plain, type PaperNode, type Paragraph, type Table } from "../../../../shared/exports/paper";
import { voiceoverDocx } from "../../../../shared/exports/voiceover";
import { scriptOf } from "../../../../shared/exports/voiceover/script";
import { beginning } from "../../../../shared/exports/voiceover/words";
import { voiceoverPaper } from "../../../../shared/exports/voiceover/tree";
import { DEFAULT_PACE, speak, type Pace } from "../../../../shared/speech";

const newId = countingIds("v-");
const block = (lines: readonly (readonly [LineKind, string])[], fields: Partial<Block> = {}): Block =>
  emptyBlock(newId, "exercise", { title: "Press", lines: lines.map(([kind, text]) => newLine(newId, kind, text)), ...fields });
const episode = (...blocks: Block[]): Episode => emptyEpisode(newId, { title: "Short", blocks });

function flat(nodes: readonly PaperNode[]): PaperNode[] {
  return nodes.flatMap((node): PaperNode[] => {
    if (node.kind === "keepTogether" || node.kind === "box") return [node, ...flat(node.children)];
    if (node.kind === "columns") return node.columns.flatMap((column) => flat(column.children));
    return [node];
  });
}
const nodesOf = (of: Episode, pace?: Pace): PaperNode[] => voiceoverPaper(of, pace).sections.flatMap((section) => flat(section.children));
const isParagraph = (node: PaperNode): node is Paragraph => node.kind === "paragraph";
const wordsOf = (nodes: readonly PaperNode[]): string =>
  nodes.flatMap((node): string[] => {
    if (node.kind === "heading") return [node.text];
    if (isParagraph(node)) return [plain(node.text)];
    if (node.kind === "keyValues") return node.pairs.flatMap(({ key, value }) => [key, plain(value)]);
    return node.kind === "table" ? node.rows.flatMap((row) => row.cells.flat()).flatMap((cell) => (isParagraph(cell) ? [plain(cell.text)] : [])) : [];
  }).join("\n").replace(/\u00a0/g, " ");
const scripts = (nodes: readonly PaperNode[]): Table[] => nodes.filter((node): node is Table => node.kind === "table" && node.columns[1]?.head === "say");
const bare = (text: string): string => text.replace(/\u00a0/g, " ").replace(/\s+[/¦](?=\s|$)/g, "").replace(/\s+/g, " ").trim();

describe("voiceoverPaper", () => {
  it("prints every sentence in order, large, with its seconds; the sentences of a line add up to it", () => {
    const nodes = nodesOf(demoEpisode);
    const rows = scripts(nodes).flatMap((table) => table.rows);
    const said = demoEpisode.blocks.flatMap((each) => linesOf(each, "say")).map((line) => line.text);
    const cells = rows.map((row) => row.cells.map((cell) => cell.filter(isParagraph)));
    expect(bare(cells.map((cell) => plain(cell[1]?.[0]?.text ?? "")).join(" "))).toBe(bare(said.join(" ")));
    expect(cells.every((cell) => /[.!?]( \/)?$/.test(plain(cell[1]?.[0]?.text ?? "").replace(/\u00a0/g, " ")))).toBe(true);
    expect(Math.min(...cells.map((cell) => cell[1]?.[0]?.size ?? 0))).toBeGreaterThanOrEqual(16);
    const [opening] = scriptOf(demoEpisode, DEFAULT_PACE);
    const last = opening?.rows.at(-1);
    expect((last?.at ?? 0) + (last?.seconds ?? 0) - (opening?.rows[0]?.at ?? 0)).toBeCloseTo(speak(said[0] ?? "").seconds, 6);
  });

  it("gives a line that was read and timed the seconds of its take, and says so", () => {
    const made = episode(block([["say", "Sit down. Stay there."], ["say", "Stand up."]]), block([["say", "Walk."]]));
    const [read] = made.blocks[0]?.lines ?? [];
    const measured = new Map([[read?.id ?? "", { seconds: 30 }]]);
    const [first, second] = scriptOf(made, DEFAULT_PACE, measured);
    expect(first?.rows.map(({ isMeasured }) => isMeasured)).toEqual([true, true, false]);
    const last = first?.rows[1];
    expect((last?.at ?? 0) + (last?.seconds ?? 0) - (first?.rows[0]?.at ?? 0)).toBeCloseTo(30, 6);
    // Without a clip the picture is as long as what was read, and what follows begins later.
    expect(second?.starts).toBeCloseTo((scriptOf(made, DEFAULT_PACE)[1]?.starts ?? 0) + 30 - speak("Sit down. Stay there.").seconds, 6);
    const words = (of: ReadonlyMap<string, { seconds: number }>): string => wordsOf(voiceoverPaper(made, DEFAULT_PACE, of).sections.flatMap((section) => flat(section.children)));
    expect(words(measured).split("\n").filter((line) => line === "measured")).toHaveLength(2);
    expect(words(measured)).toContain("; measured: as long as in your take of these words");
    expect(words(new Map())).not.toContain("measured");
  });

  it("leaves private notes, cues and cautions out", () => {
    const words = wordsOf(nodesOf(episode(block([["note", "my secret"], ["cue", "elbows in"], ["caution", "sharp pain"], ["say", "Hello."]]))));
    expect(words).toContain("Hello.");
    expect(words).not.toMatch(/secret|elbows in|sharp pain/);
  });

  it("says by how much the words run over the clip and how many to cut, in the block and in the overview", () => {
    const words = wordsOf(nodesOf(episode(block([["say", "One two three four five six seven eight nine ten. ".repeat(4).trim()]], { clipSeconds: 5 }))));
    expect(words.match(/\d+ s too long: cut about \d+ words/g)).toHaveLength(2);
  });

  it("says how much picture is left, and when no clip is set", () => {
    expect(wordsOf(nodesOf(episode(block([["say", "Short."]], { clipSeconds: 30 }))))).toMatch(/Clip 30 s, words 1 s: \d+ s of picture left\./);
    expect(wordsOf(nodesOf(episode(block([["say", "Short."]]))))).toContain("Words 1 s: no clip length set.");
  });

  it("says which blocks have no words, and how long their picture is", () => {
    const words = wordsOf(nodesOf(episode(block([["shot", "Side, full, 12 s: arms"]]), block([]), block([["say", "   "]], { clipSeconds: 9 }))));
    expect(words).toContain("No words: 12 s of picture.");
    expect(words).toContain("No words, and no picture yet.");
    expect(words).toContain("No words: 9 s of picture.");
  });

  it("gives what is said otherwise below its sentence, the set line, and what is on screen beside the words it begins with", () => {
    const made = episode(block([["say", "Do 3 x 8 @ 20 kg. Now rest."], ["shot", "Side, full, 2 s: arms"], ["shot", "Rear, full, 90 s: back"], ["shot", "Insert, 4 s: grip"]], { sets: [{ id: newId(), role: "working", text: "3 x 8 @ 20 kg" }], clipSeconds: 30 }));
    const words = wordsOf(nodesOf(made));
    expect(words).toContain("say  3 x 8 @ 20 kg: three sets of eight at twenty kilos");
    expect(words).toContain("Sets  3 x 8 @ 20 kg");
    const beside = scripts(nodesOf(made)).flatMap((table) => table.rows).map((row) => row.cells[2]?.filter(isParagraph).map((cell) => plain(cell.text)));
    expect(beside).toEqual([["Side, full, 2 s: arms", "Rear, full, 90 s: back"], []]);
    expect(words).toContain("Then on screen  Insert, 4 s: grip");
  });

  it("adds up as it is printed: small figures that rounding would part have tenths, large ones are counted from each other", () => {
    const said = (clipSeconds: number): string => /Clip .*/.exec(wordsOf(nodesOf(episode(block([["say", "Breathe."]], { clipSeconds })))))?.[0] ?? "";
    expect(said(2)).toMatch(/^Clip 2 s, words 0\.\d s: 1\.\d s of picture left\.$/);
    expect(said(30)).toBe("Clip 30 s, words 1 s: 29 s of picture left.");
    for (const clipSeconds of [1.2, 2, 3.4, 5, 7.7, 9.9, 11.2, 29.5, 60]) {
      const [clip, words, off] = Array.from(said(clipSeconds).matchAll(/([\d.]+) s/g), ([, figure]) => Number(figure));
      if (off !== undefined) expect((clip ?? 0) - (words ?? 0)).toBeCloseTo(off, 6);
    }
  });

  it("marks what is said after the clip's end instead of giving it a time of the next block, and explains the mark only then", () => {
    const made = episode(block([["say", "First we stand up tall. Then we walk to the far wall and touch it. Then we come back."]], { clipSeconds: 4 }), block([["say", "Next."]], { clipSeconds: 20 }));
    const cells = scripts(nodesOf(made)).flatMap((table) => table.rows).map((row) => row.cells[0]?.filter(isParagraph).map(({ text }) => plain(text)));
    expect(cells[0]).toEqual(["0:00", "2 s"]);
    expect(cells[1]?.[2]).toMatch(/^runs \d s over$/);
    expect(cells[2]?.[0]).toMatch(/^\+\d s$/);
    expect(cells[3]?.[0]).toBe("0:05");
    expect(wordsOf(nodesOf(made))).toContain("begins 3 s after its clip has ended");
    expect(wordsOf(nodesOf(episode(block([["say", "Next."]], { clipSeconds: 20 }))))).not.toContain("its clip has ended");
  });

  it("never goes back in time within the running times it prints", () => {
    const times = scriptOf(demoEpisode, DEFAULT_PACE).flatMap(({ rows }) => rows).map(beginning).filter((time) => !time.startsWith("+")).map((time) => time.split(":").reduce((sum, part) => sum * 60 + Number(part), 0));
    expect(times).toEqual([...times].sort((a, b) => a - b));
  });

  it("explains only what it prints, and without words neither signs nor pace", () => {
    const silent = wordsOf(nodesOf(episode(block([["shot", "Side, full, 12 s: arms"]]))));
    expect(silent).toContain("nothing is said in this episode");
    expect(silent).not.toMatch(/How to read it|Pace|0 words/);
    const bare = wordsOf(nodesOf(episode(block([["say", "Walk."]]))));
    expect(bare).not.toMatch(/words you lean on|what is on screen|below a sentence/);
    expect(wordsOf(nodesOf(episode(block([["say", "Walk *slowly* for 20 s."], ["shot", "Side, full, 12 s: arms"]]))))).toMatch(/words you lean on[^]*what is on screen[^]*below a sentence/);
  });

  it("takes the stars off a block's name, and cuts a long one in the overview only", () => {
    const long = "Half-kneeling press ".repeat(8).trim();
    const words = wordsOf(nodesOf(episode(block([["say", "Walk."]], { title: "Open *now*" }), block([["say", "Walk."]], { title: long }))));
    expect(words).toContain("1. Open now");
    expect(words).toContain(`2. ${long}`);
    expect(words.split(long)).toHaveLength(2);
    expect(words).toContain("…");
  });

  it("keeps the bar between two shots at the end of a line", () => {
    const made = episode(block([["say", "Walk."], ["shot", "Side, full, 20 s: arms"], ["shot", "Front, full, 20 s: legs"], ["shot", "Insert, 4 s: grip"]]));
    const after = nodesOf(made).filter(isParagraph).map(({ text }) => plain(text)).find((text) => text.startsWith("Then on screen"));
    expect(after).toContain("legs\u00a0| Insert");
  });

  it("counts the running time on through sentences, lines and blocks", () => {
    const made = episode(block([["say", "First line."]], { clipSeconds: 60 }), block([["say", "Second line. And more."], ["say", "Third line."]], { clipSeconds: 30 }));
    const starts = scriptOf(made, DEFAULT_PACE).flatMap(({ rows }) => rows.map(({ at }) => at));
    const second = speak("Second line. And more.").seconds;
    expect(starts[0]).toBe(1);
    expect(starts[1]).toBe(61);
    expect(starts[3]).toBeCloseTo(61 + second + DEFAULT_PACE.sentenceSeconds, 6);
    expect(scripts(nodesOf(made)).flatMap((table) => table.rows).map((row) => plain(row.cells[0]?.filter(isParagraph)[0]?.text ?? "")).slice(0, 2)).toEqual(["0:01", "1:01"]);
  });

  it("holds a block together, and never parts a sentence: each is one row", () => {
    const paper = voiceoverPaper(episode(block([["say", "One. Two."], ["say", "Three."]])));
    const whole = paper.sections[1]?.children[0];
    expect(whole?.kind).toBe("keepTogether");
    const table = scripts(flat(whole ? [whole] : []))[0];
    expect(table?.rows.map((row) => row.goesOn)).toEqual([true, false, false]);
  });

  it("cuts a sentence that no page should hold at a breath, and loses none of its words", () => {
    const endless = "and then we walk and we carry and we rest because the trail is long ".repeat(60).trim().slice(0, 4000);
    const [script] = scriptOf(episode(block([["say", endless]])), DEFAULT_PACE);
    const texts = script?.rows.map((row) => row.segments.map(({ text }) => text).join(" ")) ?? [];
    expect(texts.join(" ")).toBe(endless);
    expect(Math.max(...texts.map((text) => text.length))).toBeLessThanOrEqual(500);
  });

  it("prints words between stars in bold and without the stars", () => {
    const [table] = scripts(nodesOf(episode(block([["say", "Lower it *very slowly*, then stop."]]))));
    const cell = table?.rows[0]?.cells[1]?.filter(isParagraph)[0];
    expect(plain(cell?.text ?? "")).toBe("Lower it very slowly, then stop.");
    expect(typeof cell?.text === "object" && cell.text.filter((run) => run.weight === "bold").map((run) => run.text.trim())).toEqual(["very slowly,"]);
  });

  it("reckons at the speaker's own pace", () => {
    const made = episode(block([["say", "One two three four five six."]]));
    const secondsAt = (syllablesPerSecond: number) => Number(/(\d+) s/.exec(plain(scripts(nodesOf(made, { ...DEFAULT_PACE, syllablesPerSecond }))[0]?.rows[0]?.cells[0]?.filter(isParagraph)[1]?.text ?? ""))?.[1]);
    expect(secondsAt(1)).toBeGreaterThan(secondsAt(4));
  });

  it("explains its signs on the first page, with totals against the target", () => {
    const front = wordsOf(flat(voiceoverPaper(demoEpisode).sections[0]?.children ?? []));
    for (const part of ["where you marked one", "¦", "target 10:00", "Pace, words a minute", "Words against clips"]) expect(front).toContain(part);
  });

  it("takes an empty episode, and forty blocks with long names", () => {
    expect(voiceoverPaper(emptyEpisode(newId)).sections).toHaveLength(1);
    expect(wordsOf(nodesOf(emptyEpisode(newId)))).toContain("no blocks yet");
    const long = "Łódź half-kneeling press ½ × ".repeat(10).slice(0, 200).trim();
    const nodes = nodesOf(episode(...Array.from({ length: 40 }, () => block([["say", "A long line. ".repeat(60)]], { title: long }))));
    expect(nodes.filter((node) => node.kind === "heading" && node.text.endsWith(long))).toHaveLength(40);
  });
});

describe("the voiceover's exporters", () => {
  const none = new Uint8Array();
  const options = { paper: "letter", units: "kg", date: "2027-03-04", pace: DEFAULT_PACE, fonts: { regular: none, semibold: none, bold: none, italic: none, fallback: none } } as const;

  it("tell the coach how many notes were left out, and nothing where there are none", async () => {
    expect((await voiceoverDocx.render(demoEpisode, options)).notes[0]).toBe("One private note is left out of the voiceover script.");
    expect((await voiceoverDocx.render(episode(block([["note", "a"], ["note", "b"]])), options)).notes[0]).toBe("2 private notes are left out of the voiceover script.");
    expect((await voiceoverDocx.render(episode(), options)).notes).toHaveLength(1);
  });
});
