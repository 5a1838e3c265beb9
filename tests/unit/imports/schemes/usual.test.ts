import { describe, expect, it } from "vitest";
import { exerciseById } from "../../../../shared/exercises";
import { asUsual } from "../../../../shared/imports/schemes/usual";
import { parseSetLine, printSetLine } from "../../../../shared/training";

/** A set line as it comes out for an exercise of the catalogue, or for one that is only named. */
function usual(exercise: string, line: string): string {
  const read = parseSetLine(line);
  if (!read.ok) throw new Error(line);
  const subject = { exercise: exerciseById(exercise), title: exercise };
  return asUsual({ sets: [{ role: "working", text: printSetLine(read.scheme), scheme: read.scheme }], remarks: [] }, subject).sets[0]?.text ?? "";
}

describe("what goes without saying of an exercise", () => {
  it.each([
    ["lateral-raise", "3 x 12 @ 8 kg", "3 x 12 @ 8 kg each hand"],
    ["lateral-raise", "3 x 12 @ BW", "3 x 12 @ BW"],
    ["chest-supported-row", "3 x 10 @ 20 kg", "3 x 10 @ 20 kg each hand"],
    ["chest-supported-row", "3 x 10 @ 50 kg", "3 x 10 @ 50 kg"],
    ["chest-supported-row", "3 x 10 @ 110 lb", "3 x 10 @ 110 lb"],
    ["chest-supported-row", "3 x 10 @ 45 kg each hand", "3 x 10 @ 45 kg each hand"],
    ["goblet-squat", "3 x 12 @ 16 kg", "3 x 12 @ 16 kg"],
    ["single-arm-dumbbell-row", "3 x 10 @ 20 kg each hand", "3 x 10 each side @ 20 kg"],
    ["split-squat", "3 x 8 @ 10 kg", "3 x 8 each side @ 10 kg each hand"],
    ["side-plank", "3 x 30 s", "3 x 30 s each side"],
    ["kettlebell-clean", "5 x 5 @ 16 kg", "5 x 5 each side @ 16 kg"],
    ["kettlebell-clean", "5 x 5 @ 16 kg each hand", "5 x 5 @ 16 kg each hand"],
    ["wrist-curl", "2 x 15 @ 8 kg", "2 x 15 @ 8 kg"],
    ["reverse-lunge", "3 x 12", "3 x 12"],
    ["Turkish get-up", "3 x 1 @ 16 kg", "3 x 1 each side @ 16 kg"],
    ["Arnold press", "3 x 10 @ 14 kg", "3 x 10 @ 14 kg each hand"],
    ["Cable curl", "3 x 10 @ 20 kg", "3 x 10 @ 20 kg"],
  ])("%s, %s", (exercise, line, out) => {
    expect(usual(exercise, line)).toBe(out);
  });
});
