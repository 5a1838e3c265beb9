import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, emptyBlock, emptyEpisode, newLine, type Block, type BlockKind, type Episode } from "../../../../shared/episode";
import { plain, type PaperNode, type Section } from "../../../../shared/exports/paper";
import { shotListPaper, stationsOf } from "../../../../shared/exports/shot-list/tree";

/** Every node of a tree, parents first. */
function nodesIn(nodes: readonly PaperNode[]): PaperNode[] {
  return nodes.flatMap((node): PaperNode[] => {
    switch (node.kind) {
      case "table": return [node, ...nodesIn(node.rows.flatMap((row) => row.cells.flat()))];
      case "tickRow": return [node, ...nodesIn(node.text)];
      case "box": case "keepTogether": return [node, ...nodesIn(node.children)];
      case "columns": return [node, ...node.columns.flatMap((column) => nodesIn(column.children))];
      case "fieldRow": return [node, ...node.fields];
      default: return [node];
    }
  });
}

/** The words of a section, one string. */
const wordsIn = (section: Section | undefined): string =>
  nodesIn(section?.children ?? []).flatMap((node): string[] => {
    if (node.kind === "heading") return [node.text];
    if (node.kind === "paragraph") return [plain(node.text)];
    if (node.kind === "tickRow") return [node.label, node.under, node.title];
    if (node.kind === "keyValues") return node.pairs.flatMap(({ key, value }) => [key, plain(value)]);
    return [];
  }).join("\n");

const newId = countingIds("t-");
const block = (kind: BlockKind, title: string, shots: readonly string[] = [], more: Partial<Block> = {}): Block =>
  emptyBlock(newId, kind, { title, lines: shots.map((text) => newLine(newId, "shot", text)), ...more });
const episode = (blocks: readonly Block[], more: Partial<Episode> = {}): Episode =>
  emptyEpisode(newId, { title: "Short", blocks: [...blocks], ...more });

describe("shotListPaper", () => {
  it("is an overview, then one page a block, each with its running head", () => {
    const { sections } = shotListPaper(demoEpisode);
    expect(sections.map((section) => section.head?.left)).toEqual(Array(10).fill("Strong for the Trail, episode 7: Rows, presses, carries"));
    expect(sections.every((section) => section.startsPage)).toBe(true);
    const stations = stationsOf(demoEpisode);
    const row = stations[2];
    expect(sections[3]?.head?.right).toBe(`Chest-supported row, station 3 of 9, floor minutes 9 to ${Math.round((row?.to ?? 0) / 60)}`);
    expect(nodesIn(sections[3]?.children ?? [])[0]).toMatchObject({ kind: "heading", level: 1, text: "Chest-supported row" });
  });

  it("lays the stations end to end in floor time", () => {
    const stations = stationsOf(demoEpisode);
    expect(stations[0]?.from).toBe(0);
    stations.slice(1).forEach((station, at) => expect(station.from).toBe(stations[at]?.to));
  });

  it("shows the set line with its meaning in words, the marks at twice the size around them, and the alternates", () => {
    const section = shotListPaper(demoEpisode).sections[3];
    const words = wordsIn(section);
    expect(words).toContain("3 x 8-10 @ 22 kg each hand, tempo 3-1-1-0, rest 90 s, RIR 2");
    expect(words).toContain("three sets of eight to ten");
    expect(words).toContain("If the incline bench is taken: Dumbbell row with one hand on a bench, same set line");
    expect(words).toContain("Main lens, phone across (landscape), level.");
    const marks = nodesIn(section?.children ?? []).find((node) => node.kind === "table");
    const cell = marks?.kind === "table" ? marks.rows[0]?.cells[2] : undefined;
    const [big, small] = cell ?? [];
    expect(big?.kind === "paragraph" && small?.kind === "paragraph" && (big.size ?? 0) / (small.size ?? 1)).toBe(2);
    expect(nodesIn(section?.children ?? []).filter((node) => node.kind === "drawing")).toHaveLength(1);
  });

  it("gives every set and every shot a row to tick, and every tick box its own name", () => {
    const { sections } = shotListPaper(demoEpisode);
    const all = sections.flatMap((section) => nodesIn(section.children));
    const names = all.flatMap((node) => (node.kind === "tickRow" && node.field ? [node.field.name] : node.kind === "field" ? [node.name] : []));
    expect(new Set(names).size).toBe(names.length);
    const tips = all.flatMap((node) => (node.kind === "tickRow" && node.field ? [node.field.tip] : node.kind === "field" ? [node.tip] : []));
    expect(new Set(tips).size).toBe(tips.length);
    expect(tips).toContain("5. Goblet squat: set 2 filmed");
    expect(all.filter((node) => node.kind === "tickRow" && !node.field)).toEqual([]);
    const shots = demoEpisode.blocks.flatMap((each) => each.lines.filter((line) => line.kind === "shot"));
    const printed = sections.slice(1).map(wordsIn).join("\n").toLowerCase();
    for (const { text } of shots) expect(printed).toContain(text.slice(text.indexOf(": ") + 2).toLowerCase());
  });

  it("says on the first page and on the block's own that no closing shot is planned", () => {
    const { sections } = shotListPaper(demoEpisode);
    expect(wordsIn(sections[0])).toContain("No closing shot is planned.");
    expect(wordsIn(sections[9])).toContain("No shot planned for this block: film your last words to camera all the same.");
  });

  it("never leaves what to do when the station is taken alone on a page: the last two rows go with it", () => {
    const last = shotListPaper(demoEpisode).sections[5]?.children.at(-1);
    expect(last?.kind === "keepTogether" ? last.children.map(({ kind }) => kind) : []).toEqual(["tickRow", "tickRow", "spacer", "keepTogether"]);
  });

  it("says beside a set line that it was not read, since no row stands for it", () => {
    const made = block("exercise", "Row", ["Side, full: back"], { sets: [{ id: newId(), role: "working", text: "as heavy as it feels right" }] });
    expect(wordsIn(shotListPaper(episode([made])).sections[1])).toContain("Not read as a set line: it has no rows to tick below.");
    expect(shotListPaper(demoEpisode).sections.map(wordsIn).join("\n")).not.toContain("Not read as a set line");
  });

  it("keeps the tripod out of a lane people walk in with weights", () => {
    const sections = shotListPaper(demoEpisode).sections.map(wordsIn);
    expect(sections.map((words, at) => (words.includes("beside the lane, never in it") ? at : 0)).filter(Boolean)).toEqual([6]);
  });

  it("asks at the front desk for as many phones as there are", () => {
    const asked = (cameras: number, alone: boolean) => wordsIn(shotListPaper({ ...demoEpisode, session: { ...demoEpisode.session, cameras, alone } }).sections[0]);
    expect(asked(1, true)).toContain("One phone on a small tripod, only me in the picture.");
    expect(asked(2, false)).toContain("Two phones on small tripods, only me and whoever helps me in the picture.");
  });

  it("cuts long names in the running head, so that it stays one line", () => {
    const long = "word ".repeat(40).trim();
    const head = shotListPaper(episode([block("talk", long)], { title: long })).sections[1]?.head;
    expect(head?.left.length).toBeLessThanOrEqual(64);
    expect(head?.right).toMatch(/^[a-z ]{20,27}…, station 1 of 1, floor minutes/);
  });

  it("repeats a planned closing shot on the first page", () => {
    const first = shotListPaper(episode([block("closing", "Goodbye", ["Front, medium, 12 s: last words"])])).sections[0];
    expect(wordsIn(first)).toContain("Front, medium, 12 s: last words");
    expect(wordsIn(first)).not.toContain("No closing shot");
  });

  it("tells place, day, slot, kit, card and battery, and what to say at the front desk", () => {
    const words = wordsIn(shotListPaper(demoEpisode).sections[0]);
    for (const part of ["Harbour Street Strength Room", "Thursday 4 March 2027", "of 75", "06:45", "Clip-on microphone", "GB free", "full battery", "At the front desk", "keep the take only with a clear yes"]) {
      expect(words).toContain(part);
    }
  });

  it("says by how much the floor time runs over the slot", () => {
    const over = shotListPaper(episode([block("warm-up", "Long", [], { minutes: 70 })]));
    expect(wordsIn(over.sections[0])).toContain("10 over the slot: leave something out");
  });

  it("says so when nothing is planned at all", () => {
    const paper = shotListPaper(emptyEpisode(newId));
    expect(paper.sections).toHaveLength(1);
    expect(paper.title).toBe("Untitled episode: shot list");
    const words = wordsIn(paper.sections[0]);
    for (const part of ["This episode has no blocks yet: there is nothing to film.", "not written down", "No shots are planned", "0 of 60"]) expect(words).toContain(part);
  });

  it("tells a block with sets but no shots apart from one with neither, and asks what to do when an exercise has no alternate", () => {
    const { sections } = shotListPaper(episode([
      block("exercise", "Squat", [], { sets: [{ id: newId(), role: "working", text: "3 x 10 @ 20 kg" }] }),
      block("talk", "Word on shoes"),
    ]));
    expect(wordsIn(sections[1])).toContain("No shot planned for this block: tick the sets off");
    expect(wordsIn(sections[1])).toContain("no other way is planned");
    expect(wordsIn(sections[2])).toContain("No shot planned for this block: decide on the spot");
    expect(wordsIn(sections[2])).not.toContain("is taken");
  });

  it("tells loads in pounds when they are asked for", () => {
    const words = wordsIn(shotListPaper(demoEpisode, "lb").sections[5]);
    expect(words).toContain("3 x 10 @ 44 lb");
    expect(words).not.toMatch(/\bkg\b/);
  });

  it.each([3, 40])("takes %s blocks with names of 200 letters", (count) => {
    const long = "Łódź half-kneeling press ½ × ".repeat(10).slice(0, 200);
    const paper = shotListPaper(episode(Array.from({ length: count }, () => block("exercise", long, ["Side, full: all"], { station: long }))));
    expect(paper.sections).toHaveLength(count + 1);
    expect(wordsIn(paper.sections[count])).toContain(long.trim());
  });
});
