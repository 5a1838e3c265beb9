import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countingIds, readEpisode, writeEpisode } from "../../../../shared/episode";
import { importText, type Imported } from "../../../../shared/imports";
import { draftOfNotes } from "../../../../shared/imports/import-notes";
import { wordsOfText } from "../../../../shared/imports/source/words";
import { lostWords } from "../../../corpus/imports/score";

const read = (text: string): Imported => {
  const result = importText(text, "", countingIds("i-"));
  if (!result.ok) throw new Error(result.message);
  return result;
};
const sheet = ({ episode }: Imported): string[] => episode.blocks.flatMap(({ kind, title, sets, lines, alternates }) => [
  `# ${kind}: ${title}`, ...sets.map(({ role, text }) => `${role}: ${text}`), ...lines.map((line) => `${line.kind}: ${line.text}`), ...alternates.map(({ text }) => `if taken: ${text}`),
]);

const NOTES = `Intro
say: Today we pull.

Warm up
- rower 3 min
- band pull aparts

1. Lat pulldown
4x8-10 @ 45kg, rest 90s
- pull the elbows to the ribs
- don't lean back
if taken: band pulldown

2) Romanian dead lift 3x8 @ 60 kg, tempo 3-1-1-0
* push the hips back
caution: sore low back today: leave it out

Face pulls - three sets of fifteen
ask the desk about the rope

Outro:
see you next week`;

describe("notes", () => {
  it("become blocks with their set lines, lines and alternates", () => {
    expect(sheet(read(NOTES))).toEqual([
      "# opening: Intro", "say: Today we pull.",
      "# warm-up: Warm up", "note: Rower 3 min", "note: Band pull aparts",
      "# exercise: Lat pulldown", "working: 4x8-10 @ 45kg, rest 90s", "cue: Pull the elbows to the ribs", "avoid: Don't lean back", "if taken: band pulldown",
      "# exercise: Romanian deadlift", "working: 3x8 @ 60 kg, tempo 3-1-1-0", "note: Romanian dead lift", "cue: Push the hips back", "caution: sore low back today: leave it out",
      "# exercise: Face pulls", "working: 3 x 15", "note: three sets of fifteen", "note: Ask the desk about the rope",
      "# closing: Outro", "say: See you next week",
    ]);
  });

  it("lose no word", () => {
    expect(lostWords(NOTES, read(NOTES))).toEqual([]);
  });

  it("list figures that make no set line", () => {
    expect(read("Plank\n3 x 40 s\nroom 12 is free at 7\n- hold on").notUnderstood.map(({ text, reason }) => [text, reason])).toEqual([["room 12 is free at 7", "scheme"], ["-", "comment"]]);
  });

  it("count in pounds where the notes do", () => {
    expect(read("Bench press\n3x5 @ 185 lb\nSquat\n3x5 @ 225 lb").episode.session.units).toBe("lb");
  });

  it("lose no word, whatever they are made of", () => {
    const piece = fc.constantFrom(
      "Goblet squat", "rdl", "BSS", "push ups", "zercher thingy", "plank", "leg swings", "Warm up", "WARM-UP (8 min)", "cool down", "w/u", "intro:", "bye:", "outro -", "3x8", "3x8/side", "4 x 5", "2x14kg", "@ 60 kg", "@ 100", "r90", "(90s)",
      "rest 2-3 min", "tempo 3110", "RIR 2", "RPE 7-8", "each side", "20/40/60", "20x5, 40x5", "5@20 5@40", "3 rounds:", "40/20 x 4 rounds", "10", "x10", "30s", "A1", "A2)", "1.", "2)", "-", "•", "💪", "wk1", "w2", "Week 3", "ramp up", "ramp-up:",
      "cue:", "cues:", "sets:", "Sets: 3", "Reps: 10", "shot:", "if taken:", "superset w/", "ss", "+", "/", "|", "then", "elbows up", "last week", "hi everyone", "see you next week", "https://a.invalid/x?y=1", "Exercise Sets Reps Rest", "Exercise W1 W2",
      "3 10 90 s", "three sets of ten", "EMOM 10: 5", "AMRAP 12 min:", "MAIN", "Session B", "15-12-10", "**bold**", "café", "3x10 @ 20/22/24 kg", "KB", "8x40/20", "x".repeat(300),
    );
    const between = fc.constantFrom(" ", " ", " ", "\n", "\n", "\n\n", "\t", ", ", "; ", " - ", ": ");
    fc.assert(fc.property(fc.array(fc.tuple(piece, between), { minLength: 1, maxLength: 60 }), (pieces) => {
      const source = pieces.flat().join("");
      const notes = draftOfNotes({ ok: true, format: "notes", words: wordsOfText(source), asides: [], problems: [] }, "", countingIds("i-"));
      expect(lostWords(source, notes)).toEqual([]);
      expect(readEpisode(writeEpisode(notes.episode)).ok).toBe(true);
    }), { numRuns: 150 });
  });
});
