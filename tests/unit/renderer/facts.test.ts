import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, emptyEpisode } from "../../../shared/episode";
import { orNothing, readDay, readLength, readName, readNumber, readTime, readWhole, readZone } from "../../../renderer/fields/read";
import { dayName, factsSentence } from "../../../renderer/facts/facts-sentence";

describe("factsSentence", () => {
  it("says for whom, where and when in one breath", () => {
    expect(factsSentence(demoEpisode)).toBe("For beginners, in kilograms. Harbour Street Strength Room, Thursday 6:45. Out on Sunday 12:00.");
  });

  it("says what is not known yet", () => {
    expect(factsSentence(emptyEpisode(countingIds("e")))).toBe("For beginners, in kilograms. No place or day yet. No day to go out yet.");
  });

  it("names every group and the other unit", () => {
    const episode = { ...demoEpisode, audience: { level: "mixed" as const, groups: ["older" as const, "pregnant" as const] }, session: { ...demoEpisode.session, units: "lb" as const, time: null } };
    expect(factsSentence(episode)).toBe("For every level, older people and pregnant viewers, in pounds. Harbour Street Strength Room, Thursday. Out on Sunday 12:00.");
  });

  it("knows the day of the week of known dates", () => {
    // From memory: 1 January 2000 was a Saturday, 29 February 2024 a Thursday.
    expect([dayName("2000-01-01"), dayName("2024-02-29")]).toEqual(["Saturday", "Thursday"]);
  });
});

describe("reading fields", () => {
  const problem = (reading: { ok: boolean }): boolean => !reading.ok;

  it("keeps names within their length, without spaces around them", () => {
    expect(readName(5)("  abc ")).toEqual({ ok: true, value: "abc" });
    expect(readName(5)("abcdef")).toEqual({ ok: false, problem: "At most 5 characters; these are 6." });
  });

  it("takes whole numbers within bounds only", () => {
    const read = readWhole(1, 600, "the slot");
    expect(read("75")).toEqual({ ok: true, value: 75 });
    for (const text of ["", "0", "601", "7.5", "soon"]) expect(read(text)).toEqual({ ok: false, problem: "Write the slot as a whole number from 1 to 600." });
  });

  it("takes a comma for the decimal point", () => {
    expect(readNumber(0, 10, "minutes")("2,5")).toEqual({ ok: true, value: 2.5 });
    expect(problem(readNumber(0, 10, "minutes")("11"))).toBe(true);
  });

  it("takes lengths as m:ss or seconds", () => {
    const read = readLength(10, 36_000, "10:00");
    expect([read("9:40"), read("580")]).toEqual([{ ok: true, value: 580 }, { ok: true, value: 580 }]);
    expect([read("5"), read("11:00:00"), read("long")].map((r) => (r.ok ? "" : r.problem))).toEqual(["At least 10 seconds.", "At most 10 hours.", "Write a length such as 10:00."]);
  });

  it("refuses days that do not exist", () => {
    expect(readDay("2028-02-29")).toEqual({ ok: true, value: "2028-02-29" });
    for (const text of ["2027-02-29", "2027-13-01", "4.3.2027", "27-3-4"]) expect(problem(readDay(text))).toBe(true);
  });

  it("writes times with two digits", () => {
    expect(readTime("6:45")).toEqual({ ok: true, value: "06:45" });
    for (const text of ["24:00", "6:60", "six"]) expect(problem(readTime(text))).toBe(true);
  });

  it("knows time zones", () => {
    expect(readZone("Europe/Dublin")).toEqual({ ok: true, value: "Europe/Dublin" });
    for (const text of ["Nowhere/Town", "", "a b"]) expect(problem(readZone(text))).toBe(true);
  });

  it("takes nothing for null where nothing is allowed", () => {
    expect(orNothing(readDay)("  ")).toEqual({ ok: true, value: null });
  });
});
