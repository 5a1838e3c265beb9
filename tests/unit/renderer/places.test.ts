import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, emptyBlock, newLine, type Block, type CarryOver, type SetRole } from "../../../shared/episode";
import { cameraMoves, marksOf } from "../../../shared/filming";
import { rampOf } from "../../../shared/training";
import { dayAndTime } from "../../../renderer/places/day";
import { disclosurePlaces } from "../../../renderer/places/disclosure";
import { actualsInWords, againstLastTime, rampInWords } from "../../../renderer/places/loads";
import { coverageRows, isUnfilmed, markWords } from "../../../renderer/places/shoot-rows";

const id = countingIds("p");
const exercise = (which: string, sets: readonly (readonly [SetRole, string])[], shots: readonly string[] = []): Block =>
  emptyBlock(id, "exercise", { exercise: which, sets: sets.map(([role, text]) => ({ id: id(), role, text })), lines: shots.map((text) => newLine(id, "shot", text)) });
const row = exercise("chest-supported-row", [["ramp-up", "1 x 8 @ 12 kg each hand"], ["working", "3 x 8-10 @ 22 kg each hand, rest 90 s"]], [
  "Side, full, set 2, 20 s: the whole arm path", "Rear, medium, set 3, 15 s: shoulder blades", "Insert, 6 s, nice: grip", "Front, full, set 9: too late",
]);

describe("coverageRows", () => {
  const marks = marksOf(row);
  const rows = coverageRows(row, marks, new Map(cameraMoves(row).map((move) => [move.afterSet, move.seconds])));

  it("lists ramp-up sets, working sets, then what names no set or one that is not planned", () => {
    expect(rows.map((one) => one.name)).toEqual(["Ramp-up 1", "Set 1", "Set 2", "Set 3", "Any set", "No such set"]);
  });

  it("puts each shot under its mark and on its set", () => {
    const filled = rows.map((one) => one.shots.map((shots) => shots.map((shot) => shot.subject).join()).join("|"));
    expect(filled).toEqual(["|||", "|||", "the whole arm path|||", "|shoulder blades||", "||grip|", "|||too late"]);
  });

  it("says before which set the camera moves", () => {
    expect(rows.map((one) => one.moveBefore !== null)).toEqual([false, false, false, true, false, false]);
  });

  it("has one row for a block without sets", () => {
    const talk = emptyBlock(id, "opening", { lines: [newLine(id, "shot", "Front, medium: hello")] });
    expect(coverageRows(talk, marksOf(talk), new Map()).map((one) => one.name)).toEqual(["Whole block"]);
  });

  it("knows blocks of which nothing would be filmed", () => {
    expect(demoEpisode.blocks.filter(isUnfilmed).map((block) => block.title)).toEqual(["Closing"]);
  });

  it("names a mark of which little is known", () => {
    expect(markWords({ angle: null, size: null })).toBe("any angle");
  });
});

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
