import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, emptyBlock, emptyEpisode, linesOf, newLine, type Block, type Episode, type LineKind } from "../../../../shared/episode";
import { plain, type PaperNode, type Paragraph, type Table } from "../../../../shared/exports/paper";
import { voiceoverDocx } from "../../../../shared/exports/voiceover";
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
  }).join("\n");
const scripts = (nodes: readonly PaperNode[]): Table[] => nodes.filter((node): node is Table => node.kind === "table" && node.columns[1]?.head === "say");
const bare = (text: string): string => text.replace(/\s+[/¦](?=\s|$)/g, "").replace(/\s+/g, " ").trim();

describe("voiceoverPaper", () => {
  it("prints every say line in order, large, with its seconds", () => {
    const nodes = nodesOf(demoEpisode);
    const rows = scripts(nodes).flatMap((table) => table.rows);
    const said = demoEpisode.blocks.flatMap((each) => linesOf(each, "say")).map((line) => line.text);
    const cells = rows.map((row) => row.cells.map((cell) => cell.filter(isParagraph)));
    expect(cells.map((cell) => bare(plain(cell[1]?.[0]?.text ?? "")))).toEqual(said.map(bare));
    expect(cells.map((cell) => plain(cell[2]?.[0]?.text ?? ""))).toEqual(said.map((text) => `${Math.round(speak(text).seconds)} s`));
    expect(Math.min(...cells.map((cell) => cell[1]?.[0]?.size ?? 0))).toBeGreaterThanOrEqual(15);
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

  it("gives the spoken form of lines and set lines that are not said as written, and what is on screen", () => {
    const made = episode(block([["say", "Do 3 x 8 @ 20 kg."], ["say", "Now rest."], ["shot", "Side, full: arms"]], { sets: [{ id: newId(), role: "working", text: "3 x 8 @ 20 kg" }] }));
    const words = wordsOf(nodesOf(made));
    expect(words).toContain("said: Do three sets of eight at twenty kilos.");
    expect(words).toContain("Set line: 3 x 8 @ 20 kg said: three sets of eight at twenty kilos");
    expect(words).toContain("On screen: Side, full: arms");
    expect(words.match(/said: /g)).toHaveLength(2);
  });

  it("counts the running time on through lines and blocks", () => {
    const made = episode(block([["say", "First line."]], { clipSeconds: 60 }), block([["say", "Second line."], ["say", "Third line."]], { clipSeconds: 30 }));
    const starts = scripts(nodesOf(made)).flatMap((table) => table.rows).map((row) => row.cells[0]?.filter(isParagraph).map((cell) => plain(cell.text)).join(""));
    const third = 60 + speak("Second line.").seconds + DEFAULT_PACE.sentenceSeconds;
    expect(starts).toEqual(["0:00", "1:00", `1:0${Math.round(third) - 60}`]);
  });

  it("holds a block of one line together, and a line of several in one row", () => {
    const one = voiceoverPaper(episode(block([["say", "Only."]]))).sections[1]?.children[0];
    expect(one?.kind === "keepTogether" && scripts(flat(one.children))).toHaveLength(1);
    const two = scripts(nodesOf(episode(block([["say", "One."], ["say", "Two."]]))));
    expect(two.map((table) => table.rows.length)).toEqual([2]);
  });

  it("reckons at the speaker's own pace", () => {
    const made = episode(block([["say", "One two three four five six."]]));
    const secondsAt = (syllablesPerSecond: number) => Number(/(\d+) s/.exec(plain(scripts(nodesOf(made, { ...DEFAULT_PACE, syllablesPerSecond }))[0]?.rows[0]?.cells[2]?.filter(isParagraph)[0]?.text ?? ""))?.[1]);
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
