import { describe, expect, it } from "vitest";
import { countingIds } from "../../../../shared/episode";
import { importText } from "../../../../shared/imports";

/** Each block but opening and closing with its sets. */
const outline = (said: string): string[] => {
  const result = importText(`hello everyone welcome back ${said} and that's it for today thanks for watching see you next week`, "", countingIds("i-"));
  if (!result.ok) throw new Error(result.message);
  return result.episode.blocks.filter(({ kind }) => kind !== "opening" && kind !== "closing").map(({ kind, exercise, sets }) => [exercise ?? kind, ...sets.map(({ text }) => text)].join(" | "));
};

describe("exercises told in one breath", () => {
  it.each([
    ["okay then it's a superset so bicep curls and tricep push downs twelve each three times round with sixty seconds rest i use ten kilo dumbbells for the curls and the push downs at twenty", ["biceps-curl | 3 x 12 @ 10 kg each hand, rest 60 s", "triceps-pushdown | 3 x 12 @ 20 kg, rest 60 s"]],
    ["so to finish plank three times forty five seconds keep breathing and dead bugs two sets of eight each side", ["plank | 3 x 45 s", "dead-bug | 2 x 8 each side"]],
    ["first barbell curls thirty kilos ten reps and then without a rest hammer curls with a pair of twelves twelve reps rest when you've done both three rounds altogether", ["barbell-curl | 3 x 10 @ 30 kg", "hammer-curl | 3 x 12 @ 12 kg each hand"]],
  ])("%s", (said, blocks) => {
    expect(outline(said)).toEqual(blocks);
  });
});

describe("a figure right before the name of the second exercise", () => {
  it("is the second's", () => {
    expect(outline("first up push press and inverted rows back to back so the push press is forty kilos and it's five reps and then do ten rows body straight so three rounds of that")).toEqual(["push-press | 3 x 5 @ 40 kg", "inverted-row | 3 x 10"]);
  });
});

describe("exercises whose rounds are told before their names", () => {
  it("are lent them", () => {
    expect(outline("first up hip thrusts four sets of eight at sixty kilos then i've got two things and i go around them three times incline push ups fifteen of those then band rows twenty of those")).toEqual(["hip-thrust | 4 x 8 @ 60 kg", "incline-push-up | 3 x 15", "band-row | 3 x 20"]);
  });
});

describe("a warm-up that is named by its moves only", () => {
  it.each([
    "we're gonna start with arm circles and cat camels for like five minutes just to loosen everything up",
    "so first a few hip circles and some leg swings ten each way",
    "let's start with cat camels ten of those and then open books five each side",
  ])("%s", (said) => {
    expect(outline(`${said} okay exercise number one bench press we're doing five sets of five at seventy kilos then bent over rows three sets of eight`)).toEqual(["warm-up", "bench-press | 5 x 5 @ 70 kg", "bent-over-row | 3 x 8"]);
  });
});
