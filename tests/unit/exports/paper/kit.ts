import { readFileSync } from "node:fs";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import type { FontFiles } from "../../../../shared/exports/types";
import { box, columns, drawing, field, fieldRow, heading, keyValues, label, list, paragraph, rule, table, tickRow, type Paper, type PaperNode } from "../../../../shared/exports/paper";

const font = (path: string): Uint8Array => new Uint8Array(readFileSync(`node_modules/@expo-google-fonts/${path}`));
const hyper = "atkinson-hyperlegible-next";

/** The fonts the program ships with. */
export const fonts: FontFiles = {
  regular: font(`${hyper}/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf`),
  semibold: font(`${hyper}/600SemiBold/AtkinsonHyperlegibleNext_600SemiBold.ttf`),
  bold: font(`${hyper}/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf`),
  italic: font(`${hyper}/400Regular_Italic/AtkinsonHyperlegibleNext_400Regular_Italic.ttf`),
  fallback: font("noto-sans/400Regular/NotoSans_400Regular.ttf"),
};

export const A4 = { paper: "a4", fonts, date: "2027-03-04" } as const;
export const LETTER = { ...A4, paper: "letter" } as const;

export const paperOf = (children: readonly PaperNode[], more: Partial<Paper> = {}): Paper => ({
  title: "Kit paper", author: "Odalys Brandt", subject: "A paper for tests", language: "en-GB",
  foot: "Ask before filming.", sections: [{ startsPage: true, head: null, children }], ...more,
});

/** A node of every kind. */
export const everyNode = (): readonly PaperNode[] => [
  heading(1, "Chest-supported row"),
  paragraph("3 x 8-10 @ 22 kg each hand, ½ × – é ł, three seconds down, rest 90 s", { size: 14, weight: "semibold" }),
  columns([
    {
      width: 1,
      children: [drawing({
        width: 240, height: 190, frame: true, alt: "Floor plan: mark A stands 2.9 m to the side, mark B 1.8 m behind.",
        shapes: [
          { shape: "rect", x: 100, y: 60, w: 36, h: 70, fill: "light" }, { shape: "text", x: 118, y: 100, text: "bench", size: 8, anchor: "middle" },
          { shape: "circle", x: 18, y: 100, r: 10, fill: "black" }, { shape: "text", x: 18, y: 104, text: "A", size: 11, anchor: "middle", weight: "bold", white: true },
          { shape: "line", from: [30, 97], to: [90, 75], dash: [3, 2] }, { shape: "polyline", points: [[200, 0], [208, 0], [208, 190], [200, 190]], closed: true, fill: "light", grey: true },
        ],
      })],
    },
    {
      width: 1.2,
      children: [
        table({
          summary: "Where each mark stands", rowHead: 0,
          columns: [{ width: 1, head: "mark" }, { width: 2, head: "from" }, { width: 2, head: "stand" }, { width: 2, head: "lens height" }],
          rows: [{ cells: [[paragraph("A", { size: 15, weight: "bold" })], [paragraph("side, full body")], [paragraph("2.9 m", { size: 15, weight: "semibold" }), label("4 steps")], [paragraph("1.0 m", { size: 15, weight: "semibold" }), label("hip")]] }],
        }),
        paragraph("Main lens, phone level, landscape. Move A to B during the rest after set 2: 45 of 90 seconds."),
      ],
    },
  ]),
  tickRow({ label: "Ramp", under: "12 kg x 5", title: "A, side", text: [paragraph("Set-up: lie chest down, ribs on the pad, toes light. Say nothing.", { size: 12 })], log: [[{ blank: 28 }, "kg", { blank: 28 }, "reps"]] }),
  tickRow({ label: "Set 1", under: "22 kg", title: "B, rear", text: [paragraph("Whole arm path.", { size: 12 })], log: [[{ blank: 28 }, "kg", { blank: 28 }, "reps"]], field: { name: "tick-1", tip: "Set 1 is filmed" } }),
  box("outline", [columns([{ width: 1, children: [paragraph("If the bench is taken", { weight: "semibold" })] }, { width: 3, children: [paragraph("Dumbbell row on a 30° incline bench, same set line.")] }])]),
  box("bar", [paragraph([{ text: "Before you start. ", weight: "semibold" }, { text: "This plan is general.", italic: true }])]),
  heading(2, "Kit"),
  list(["Phone and tripod", "Spare battery, charged the evening before and carried in the inner pocket, not in the bag that stays in the locker room all morning"]),
  list(["Ask", "Film"], { ordered: true }),
  keyValues([{ key: "Place", value: "Harbour Street Strength Room" }, { key: "Date", value: "4 March 2027" }]),
  rule("hair"),
  heading(3, "Notes"),
  fieldRow([field({ type: "text", name: "reps-1", tip: "Reps, set 1", width: 40, height: 20 }), field({ type: "tick", name: "done", tip: "Done", width: 20, height: 20 })]),
  field({ type: "text", name: "notes", tip: "Notes", width: null, height: 60, multiline: true }),
];

export const open = (bytes: Uint8Array) => getDocument({ data: bytes.slice(), isEvalSupported: false, useSystemFonts: false, verbosity: 0 }).promise;

/** The words of each page as another reader sees them, spaces made single. */
export async function pageTexts(bytes: Uint8Array): Promise<string[]> {
  const pdf = await open(bytes);
  const texts: string[] = [];
  for (let p = 1; p <= pdf.numPages; p++) {
    const content = await (await pdf.getPage(p)).getTextContent();
    texts.push(content.items.map((item) => ("str" in item ? item.str : "")).join(" ").replace(/\s+/g, " "));
  }
  return texts;
}
