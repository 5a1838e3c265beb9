import { describe, expect, it } from "vitest";
import { countingIds } from "../../../../shared/episode";
import { importText, type Imported } from "../../../../shared/imports";

const read = (said: string): Imported => {
  const result = importText(`okay first up back squats ${said} keep your chest up and your heels down`, "", countingIds("i-"));
  if (!result.ok) throw new Error(result.message);
  return result;
};
const sets = (said: string): string =>
  read(said).episode.blocks.filter(({ kind }) => kind === "exercise").flatMap((block) => block.sets.map(({ role, text }) => (role === "ramp-up" ? `ramp ${text}` : text))).join("; ");

describe("sets told one by one", () => {
  it.each([
    ["one warm up set of ten with the empty bar then three fives at sixty", "ramp 1 x 10; 3 x 5 @ 60 kg"],
    ["i'll do a warm up with just the bar for ten then fifty for five and then work sets are five by five at seventy", "ramp 1 x 10; ramp 1 x 5 @ 50 kg; 5 x 5 @ 70 kg"],
    ["the empty bar twenty kilos for ten and then we load fifty for five as another warm up and the work sets are four sets of six at seventy", "ramp 1 x 10 @ 20 kg; ramp 1 x 5 @ 50 kg; 4 x 6 @ 70 kg"],
    ["first we do ten reps at thirty kilos just to warm up and then i go to fifty kilos and we do two sets of twelve", "ramp 1 x 10 @ 30 kg; 2 x 12 @ 50 kg"],
    ["start light so ten reps with eight kilos just to get the feel then three sets of twelve with sixteen kilos", "ramp 1 x 10 @ 8 kg; 3 x 12 @ 16 kg"],
    ["i've got forty on the bar and that's a warm up that's five reps then five at sixty that counts and seventy for three", "ramp 1 x 5 @ 40 kg; 1 x 5 @ 60 kg; 1 x 3 @ 70 kg"],
    ["work up to a top set of five at a hundred then three back off sets of eight at eighty", "1 x 5 @ 100 kg; 3 x 8 @ 80 kg"],
    ["two warm up sets that i won't show you and then five sets of three at one twenty kilos", "5 x 3 @ 120 kg"],
    ["two warm up sets first five at forty and three at sixty then four sets of five at eighty", "ramp 1 x 5 @ 40 kg; ramp 1 x 3 @ 60 kg; 4 x 5 @ 80 kg"],
    ["first set is twelve reps at sixty second set is ten at seventy and the last one is eight at eighty", "1 x 12 @ 60 kg; 1 x 10 @ 70 kg; 1 x 8 @ 80 kg"],
    ["warm up set of eight at ninety five pounds then working sets three by eight at one thirty five pounds", "ramp 1 x 8 @ 95 lb; 3 x 8 @ 135 lb"],
  ])("%s", (said, lines) => {
    expect(sets(said)).toBe(lines);
  });

  it("lists a load told in plates, which say nothing without the bar's weight and theirs", () => {
    const result = read("three sets of eight with a plate a side");
    expect(result.episode.blocks.flatMap(({ sets: lines }) => lines.map(({ text }) => text))).toEqual(["3 x 8"]);
    expect(result.notUnderstood.map(({ text, reason }) => [text, reason])).toEqual([["a plate a side", "scheme"]]);
  });
});
