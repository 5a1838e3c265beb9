import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, emptyBlock, newLine, type Block, type CarryOver, type SetRole } from "../../../shared/episode";
import { rampOf } from "../../../shared/training";
import { dayAndTime } from "../../../renderer/places/day";
import { disclosurePlaces } from "../../../renderer/places/disclosure";
import { actualsInWords, againstLastTime, rampInWords } from "../../../renderer/places/loads";

const id = countingIds("p");
const exercise = (which: string, sets: readonly (readonly [SetRole, string])[], shots: readonly string[] = []): Block =>
  emptyBlock(id, "exercise", { exercise: which, sets: sets.map(([role, text]) => ({ id: id(), role, text })), lines: shots.map((text) => newLine(id, "shot", text)) });
const row = exercise("chest-supported-row", [["working", "3 x 8-10 @ 22 kg each hand, rest 90 s"]]);

describe("loads", () => {
  const last = (sets: string, actuals: CarryOver["actuals"] = []): CarryOver => ({ exercise: "chest-supported-row", sets, actuals, note: "" });

  it("compares today with last time", () => {
    expect(againstLastTime(row, last("3 x 8-10 @ 20 kg each hand"))).toBe("22 kg each hand today, 20 last time: 2 kg more, 10 %.");
    expect(againstLastTime(row, last("3 x 8-10 @ 22 kg each hand"))).toBe("22 kg each hand again.");
    expect(againstLastTime(row, last("3 x 8-10 @ 24 kg each hand"))).toBe("22 kg each hand today, 24 last time: 2 kg less, 8 %.");
  });

  it("names the common recommendation when the step is larger", () => {
    expect(againstLastTime(row, last("3 x 8-10 @ 16 kg each hand"))).toMatch(/38 %\. Common recommendation is 2 to 10 %/);
  });

  it("says nothing when they cannot be compared", () => expect(againstLastTime(row, last("3 x 10 @ bodyweight"))).toBeNull());

  it("says what was really lifted, loads apart where they changed", () => {
    const actuals = [{ set: 1, load: 20, reps: 10, rir: 2 }, { set: 2, load: 20, reps: 9, rir: 1 }, { set: 3, load: 18, reps: null, rir: null }];
    expect(actualsInWords(last("", actuals), "kg")).toBe("20 kg x 10, 9 and 18 kg x ?");
  });

  it("shows a ramp with its arithmetic", () => {
    const ramp = rampOf(row);
    expect(ramp && rampInWords(ramp)).toBe("8 kg x 5 (36 %), 14 kg x 3 (64 %), 18 kg x 2 (82 %), then 22 kg each hand. In steps of 2 kg.");
  });
});

describe("publishing", () => {
  it("finds where a partner is named, whatever the case and marks", () => {
    const blocks = [emptyBlock(id, "opening", { title: "Opening", lines: [newLine(id, "say", "Ad: FERNHILL-OATS sent me oats."), newLine(id, "note", "Fernhill Oats")] })];
    expect(disclosurePlaces({ blocks }, { name: "Fernhill-Oats" }).map((place) => place.name)).toEqual(["Opening"]);
    expect(disclosurePlaces(demoEpisode, { name: "Fernhill Oats" }).map((place) => place.name)).toEqual(["Opening"]);
    expect(disclosurePlaces(demoEpisode, { name: "" })).toEqual([]);
  });

  it("writes day and time out", () => {
    expect(dayAndTime("2027-03-07", "09:05")).toBe("Sunday 7 March, 9:05");
  });
});
