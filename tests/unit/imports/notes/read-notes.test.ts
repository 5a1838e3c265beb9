import { describe, expect, it } from "vitest";
import { countingIds } from "../../../../shared/episode";
import { importText, type Imported } from "../../../../shared/imports";
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
      "# exercise: Face pull", "working: 3 x 15", "note: Face pulls", "note: three sets of fifteen", "note: Ask the desk about the rope",
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
});
