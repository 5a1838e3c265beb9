import { PDFDocument } from "pdf-lib";
import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, emptyBlock, emptyEpisode, newLine, type Block, type Episode } from "../../../../shared/episode";
import { episodeClocks } from "../../../../shared/clocks";
import { EXERCISES } from "../../../../shared/exercises";
import { handoutPaper, handoutPdf } from "../../../../shared/exports/handout";
import { plain, type PaperNode } from "../../../../shared/exports/paper";
import { DEFAULT_PACE } from "../../../../shared/speech";
import { A4, LETTER, pageTexts } from "../paper/kit";

const options = { ...A4, units: "kg", pace: DEFAULT_PACE } as const;

/** Every word of a paper, in order. */
function said(nodes: readonly PaperNode[]): string {
  return nodes.map((node): string => {
    switch (node.kind) {
      case "heading": return node.text;
      case "paragraph": return plain(node.text);
      case "list": return node.items.map(plain).join("\n");
      case "table": return [...node.columns.map((column) => column.head), ...node.rows.flatMap((row) => row.cells.map(said))].join("\n");
      case "columns": return node.columns.map((column) => said(column.children)).join("\n");
      case "box":
      case "keepTogether": return said(node.children);
      case "keyValues": return node.pairs.map((pair) => `${pair.key}: ${plain(pair.value)}`).join("\n");
      default: return "";
    }
  }).join("\n");
}
const paperSaid = (episode: Episode, units: "kg" | "lb" = "kg"): string => said(handoutPaper(episode, episodeClocks(episode), units).paper.sections.flatMap((section) => section.children));
const ids = countingIds("t-");
const exercise = (title: string, sets: string, more: Partial<Block> = {}): Block => emptyBlock(ids, "exercise", { title, sets: [{ id: ids(), role: "working", text: sets }], ...more });
const episodeOf = (blocks: Block[], more: Partial<Episode> = {}): Episode => emptyEpisode(ids, { title: "Test", blocks, ...more });

describe("the handout", () => {
  it("keeps to three pages when audience or partners add a few lines, on both papers", async () => {
    const everybody: Episode = { ...demoEpisode, audience: { level: "mixed", groups: ["teen", "older", "pregnant", "postnatal", "returning"] } };
    for (const paper of [A4, LETTER]) {
      const { bytes } = await handoutPdf.render(everybody, { ...options, ...paper });
      expect((await PDFDocument.load(bytes)).getPageCount()).toBe(3);
    }
  });

  it("names what each set counts in its field's tip", () => {
    const made = episodeOf([exercise("Carry", "1 x 40 m @ 24 kg"), exercise("Plank", "1 x 30 s"), exercise("Lunge", "1 x 8 each side @ 10 kg")]);
    const tree = JSON.stringify(handoutPaper(made, episodeClocks(made), "kg").paper);
    for (const tip of ["1. Carry: metres you did in set 1", "2. Plank: seconds you did in set 1", "3. Lunge: reps each side you did in set 1"]) expect(tree).toContain(`"tip":"${tip}"`);
  });

  it("prints every cue, avoid, caution and alternate of the plan, as another reader sees it", async () => {
    const { bytes, notes } = await handoutPdf.render(demoEpisode, options);
    expect(notes).toEqual([]);
    const text = (await pageTexts(bytes)).join(" ").replace(/\s+/g, "");
    for (const block of demoEpisode.blocks.filter((each) => ["warm-up", "exercise", "cool-down"].includes(each.kind))) {
      for (const line of block.lines.filter((each) => ["cue", "avoid", "caution"].includes(each.kind))) expect(text).toContain(line.text.replace(/\s+/g, ""));
      for (const alternate of block.alternates) expect(text).toContain(alternate.text.replace(/\s+/g, ""));
    }
  });

  it("keeps notes, shots and spoken words to the coach", () => {
    const text = paperSaid(demoEpisode);
    for (const line of demoEpisode.blocks.flatMap((block) => block.lines).filter((each) => ["note", "shot", "say"].includes(each.kind))) expect(text).not.toContain(line.text);
  });

  it("begins with title, series, coach, minutes, partner and caution, in that order", () => {
    const text = paperSaid(demoEpisode);
    const places = ["Rows, presses, carries", "Strong for the Trail, episode 7, with Odalys Brandt. About", "minutes in a gym", "Ad: Fernhill Oats", "Before you start.", "Exercise"].map((words) => text.indexOf(words));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places.every((place) => place >= 0)).toBe(true);
  });

  it("counts the viewer's minutes without camera moves and without talk to the camera", () => {
    const clocks = episodeClocks(demoEpisode);
    const parts = clocks.gym.blocks.flatMap((each) => {
      const kind = demoEpisode.blocks.find((block) => block.id === each.block)?.kind ?? "";
      return ["warm-up", "exercise", "cool-down"].includes(kind) ? each.parts.filter((part) => part.label !== "camera moves") : [];
    });
    const seconds = parts.reduce((sum, part) => sum + part.seconds, 0);
    const shown = Number(/About (\d+) minutes/.exec(paperSaid(demoEpisode))?.[1]);
    expect(shown % 5).toBe(0);
    expect(Math.abs(shown * 60 - seconds)).toBeLessThanOrEqual(150);
  });

  it("repeats the partner at the foot of every page", async () => {
    for (const text of await pageTexts((await handoutPdf.render(demoEpisode, options)).bytes)) expect(text).toContain("Ad: Fernhill Oats sent Odalys free oats.");
  });

  it("words a disclosure itself where the coach wrote none", () => {
    const partner = (relation: "paid" | "gifted" | "affiliate" | "own brand") => paperSaid(episodeOf([], { partners: [{ id: ids(), name: "Fernhill Oats", relation, disclosure: " " }] }));
    expect(partner("paid")).toContain("Ad: Fernhill Oats paid for a part of this video.");
    expect(partner("gifted")).toContain("Ad: Fernhill Oats gave products for this video.");
    expect(partner("affiliate")).toContain("Ad: links to Fernhill Oats earn a commission.");
    expect(partner("own brand")).toContain("Ad: Fernhill Oats is the coach's own brand.");
  });

  it("has one kg field a lift, one rep field a set, and date and notes, each with a tip that says which", async () => {
    const form = (await PDFDocument.load((await handoutPdf.render(demoEpisode, options)).bytes)).getForm();
    const names = form.getFields().map((field) => field.getName());
    const lifts = demoEpisode.blocks.filter((block) => block.kind === "exercise");
    expect(names.filter((name) => name.startsWith("load-"))).toHaveLength(lifts.length);
    // 3 + 3 + 3 + 4 + 2 sets, counted by hand from the demo's set lines.
    expect(names.filter((name) => name.startsWith("reps-"))).toHaveLength(15);
    expect(names).toEqual(expect.arrayContaining(["date", "felt", "notes"]));
    expect(new Set(names).size).toBe(names.length);
    const tree = JSON.stringify(handoutPaper(demoEpisode, episodeClocks(demoEpisode), "kg").paper);
    expect(tree).toContain('"tip":"2. Chest-supported row: reps you did in set 3"');
    expect(tree).toContain('"tip":"2. Chest-supported row: kg you used"');
  });

  it("converts loads and the head of the column to pounds, and says that it did", () => {
    const text = paperSaid(demoEpisode, "lb");
    expect(text).toContain("in the video: about 49 lb each hand");
    expect(text).toContain("Your lb");
    expect(text).not.toMatch(/\d kg/);
  });

  it("prints a set line it cannot read as written, and tells the coach", () => {
    const episode = episodeOf([exercise("Row", "a few, until it feels right ???")]);
    const { notes } = handoutPaper(episode, episodeClocks(episode), "kg");
    expect(paperSaid(episode)).toContain("a few, until it feels right ???");
    expect(notes).toEqual(['The set line "a few, until it feels right ???" of Row could not be read and is printed as written.']);
  });

  it("asks for a spotter or safety arms exactly where the plan has lifts that need them", () => {
    const needs = EXERCISES.find((each) => each.needsSpotter);
    const free = EXERCISES.find((each) => !each.needsSpotter);
    const with1 = paperSaid(episodeOf([exercise(needs?.name ?? "", "3 x 5 @ 60 kg", { exercise: needs?.id ?? null })]));
    expect(with1).toMatch(new RegExp(`For ${needs?.name ?? ""}: set the safety arms just below your lowest point, or have somebody spot you`));
    expect(paperSaid(episodeOf([exercise(free?.name ?? "", "3 x 5", { exercise: free?.id ?? null })]))).not.toContain("safety arms");
  });

  it("tells who should ask first and when to stop, even without a plan", () => {
    for (const episode of [demoEpisode, episodeOf([])]) {
      const text = paperSaid(episode);
      for (const words of ["Ask a doctor first", "qualified coach", "Start lighter than in the video", "pain, pressure or tightness in the chest", "local emergency number"]) expect(text).toContain(words);
    }
  });

  it("explains the terms the plan uses and no others", () => {
    const text = paperSaid(episodeOf([exercise("Row", "3 x 8 each side, RIR 2")]));
    expect(text).toContain("Each side: ");
    expect(text).toContain("Reps in reserve (RIR): ");
    for (const term of ["Tempo: ", "AMRAP", "EMOM", "Ramp-up: ", "RPE", "1RM", "Drop set"]) expect(text).not.toContain(term);
    expect(paperSaid(episodeOf([exercise("Row", "3 x AMRAP, tempo 3-1-1-0")]))).toMatch(/Tempo: [^]*AMRAP/);
  });

  it("says that there is no plan yet when there is none", async () => {
    const texts = await pageTexts((await handoutPdf.render(emptyEpisode(ids), options)).bytes);
    expect(texts).toHaveLength(1);
    expect(texts[0]).toContain("Untitled episode");
    expect(texts[0]).toContain("There is no plan in this episode yet.");
  });

  it("takes cautions of the talk along, since they are for viewers too", () => {
    const talk = emptyBlock(ids, "talk", { lines: [newLine(ids, "caution", "Not with a fresh shoulder injury")] });
    expect(paperSaid(episodeOf([talk, exercise("Row", "3 x 8")]))).toContain("Not with a fresh shoulder injury");
  });

  it("offers the coach's alternates first, then the catalogue's, each once", () => {
    const row = EXERCISES.find((each) => each.substitutes.length > 0);
    const substitute = EXERCISES.find((each) => each.id === row?.substitutes[0]?.exercise);
    const block = exercise("Row", "3 x 8", { exercise: row?.id ?? null, alternates: [{ id: ids(), text: `${substitute?.name ?? ""}, light` }] });
    const text = paperSaid(episodeOf([block]));
    expect(text.split(substitute?.name ?? "?")).toHaveLength(2);
  });

  it.each([["A4", A4], ["Letter", LETTER]])("holds forty blocks, 200-letter names, long words and a wall of sets on %s", async (_name, size) => {
    const long = `Half-kneeling ${"very ".repeat(30)}Donaudampfschifffahrtsgesellschaft`.slice(0, 200);
    const blocks = Array.from({ length: 40 }, (_, i) => exercise(i % 3 === 0 ? long : `Lift ${i}`, i % 5 === 0 ? "EMOM 20 min: 5 reps" : "10 x 3 @ 60 kg, rest 150 s", {
      lines: [newLine(ids, "cue", `cue${i}: ${"x".repeat(i * 20)}`), newLine(ids, "caution", `care${i}: stop when it hurts`)],
    }));
    const episode = episodeOf(blocks, { title: long, partners: Array.from({ length: 20 }, () => ({ id: ids(), name: "Fernhill Oats", relation: "paid" as const, disclosure: `Ad: ${"Fernhill Oats paid. ".repeat(20)}` })) });
    const { bytes } = await handoutPdf.render(episode, { ...options, ...size });
    const text = (await pageTexts(bytes)).join(" ");
    for (let i = 0; i < 40; i++) {
      expect(text).toContain(`cue${i}:`);
      expect(text).toContain(`care${i}: stop when it hurts`);
    }
  });

  it("gives the same bytes twice", async () => {
    const [one, other] = [await handoutPdf.render(demoEpisode, options), await handoutPdf.render(demoEpisode, options)];
    expect(Buffer.from(one.bytes).equals(Buffer.from(other.bytes))).toBe(true);
  });

  it("sets nothing a viewer reads on the floor below 9 points, and the text itself at 11 or more", () => {
    const sizes = (nodes: readonly PaperNode[]): number[] => nodes.flatMap((node): number[] => {
      switch (node.kind) {
        case "paragraph": return [node.size ?? 11];
        case "table": return node.rows.flatMap((row) => row.cells.flatMap(sizes));
        case "columns": return node.columns.flatMap((column) => sizes(column.children));
        case "box":
        case "keepTogether": return sizes(node.children);
        default: return [];
      }
    });
    const all = sizes(handoutPaper(demoEpisode, episodeClocks(demoEpisode), "kg").paper.sections.flatMap((section) => section.children));
    expect(Math.min(...all)).toBeGreaterThanOrEqual(9);
    // Handout type of 11 to 12 points: common practice, no source.
    expect(all.filter((size) => size >= 11).length / all.length).toBeGreaterThan(0.55);
  });
});
