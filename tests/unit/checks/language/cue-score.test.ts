import { expect, it } from "vitest";
import { precision, recall, scoreCues, scoreTable } from "../../../bench/cue-score";

const lines = [
  { text: "a", labels: ["shame"], difficulty: "plain" },
  { text: "b", labels: ["shame", "pain-push"], difficulty: "context" },
  { text: "c", labels: [], difficulty: "negated" },
  { text: "d", labels: [], difficulty: "plain" },
  { text: "e", labels: ["shame"], difficulty: "disputed" },
];
const score = scoreCues(lines, ({ text }) => ({ a: ["shame", "shame"], b: ["shame"], c: ["shame"], d: [], e: [] })[text] ?? []);

it("counts what is right, missed and wrong, each label once a line, disputed lines by themselves", () => {
  expect(score.all).toEqual({ right: 2, missed: 1, wrong: 1 });
  expect(score.disputed).toEqual({ right: 0, missed: 1, wrong: 0 });
  expect(score.acceptable).toEqual({ lines: 2, flagged: 1 });
  expect(score.byLabel.get("pain-push")).toEqual({ right: 0, missed: 1, wrong: 0 });
  expect(score.misses.map(({ line }) => line.text)).toEqual(["b", "e"]);
  expect(score.falseAlarms.map(({ line }) => line.text)).toEqual(["c"]);
  expect(precision(score.all)).toBeCloseTo(2 / 3);
  expect(recall(score.all)).toBeCloseTo(2 / 3);
});

it("prints figures and none of the texts", () => {
  expect(scoreTable("five", score)).toContain("acceptable ones flagged 1 of 2 (50.0 %)");
  expect(precision({ right: 0, missed: 0, wrong: 0 })).toBe(1);
});
