import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, emptyBlock, emptyEpisode, newLine, type Episode, type SessionFilming } from "../../../shared/episode";
import { cardInWords, cardPlan, formatNamed, recording, recordingOf } from "../../../shared/filming";

const usual: SessionFilming = { lens: "main", stature: 1.75, format: "1080p30 HEVC", freeGigabytes: null, batteryMinutes: null };
const filmedWith = (own: Partial<SessionFilming>): Episode => ({ ...demoEpisode, session: { ...demoEpisode.session, filming: { ...usual, ...own } } });

describe("card and battery in words", () => {
  it("say what an episode takes in the usual format when nothing is named", () => {
    // by hand: 30 min x 60 MB = 1.8 GB; x 1.4 = 2.52, + 2 kept clear; 30 / 90 of a battery
    expect(cardInWords(demoEpisode, 30)).toEqual([
      "About 30 min of recording in 1080p30 HEVC, 1.8 GB.",
      "Have 4.6 GB free: files vary by 40 %, and a phone stops before it is full.",
      "It takes 34 % of a full battery.",
    ]);
  });

  it("count in the session's own format, free space and battery", () => {
    const episode = filmedWith({ format: "4k60 hevc", freeGigabytes: 64, batteryMinutes: 60 });
    expect(recording(episode)).toEqual(recordingOf(recording(episode).minutes, "4K60 HEVC", 60));
    expect(cardInWords(episode, 30)).toEqual([
      "About 30 min of recording in 4K60 HEVC, 12.6 GB.",
      "64 GB are free: enough, with 44.3 GB to spare after a margin of 40 % and 2 GB kept clear.",
      "It takes 50 % of a full battery.",
      "That much in this format warms a phone until it stops by itself: take it out of its case and out of the sun, and stop it between sets.",
    ]);
  });

  it("say how much is too little, and which format would fit", () => {
    expect(cardInWords(filmedWith({ format: "4K30 H.264", freeGigabytes: 10 }), 30)[1]).toBe("10 GB are free, 7.8 GB too little with a margin of 40 % and 2 GB kept clear. Clear space, or film in 4K30 HEVC.");
    expect(cardInWords(filmedWith({ freeGigabytes: 1 }), 30)[1]).toBe("1 GB are free, 3.6 GB too little with a margin of 40 % and 2 GB kept clear. Clear space.");
  });

  it("ask for power when the last of the battery would be needed", () => {
    expect(cardInWords(filmedWith({ batteryMinutes: 33 }), 30)[2]).toBe("It takes 91 % of a full battery, and the last 20 % are not to be planned on: bring power.");
    expect(cardInWords(filmedWith({ batteryMinutes: 20 }), 30)[2]).toBe("It takes 2 full batteries: bring power, and charge while you rest.");
  });

  it("name a format nobody knows, and go on with the usual one", () => {
    expect(cardInWords(filmedWith({ format: "8K raw" }), 10).slice(0, 2)).toEqual(['The recording format "8K raw" is not known; it is counted as 1080p30 HEVC.', "About 10 min of recording in 1080p30 HEVC, 0.6 GB."]);
    expect(formatNamed("1080P-30 hevc")).toBe("1080p30 HEVC");
  });

  it("say when nothing is planned", () => {
    expect(cardInWords(emptyEpisode(countingIds("c-")))).toEqual(["No shots are planned, so nothing is counted for card and battery."]);
  });

  it("never call too little enough, whatever is named", () => {
    fc.assert(fc.property(fc.double({ min: 0.1, max: 2000, noNaN: true }), fc.double({ min: 0, max: 1000, noNaN: true }), (minutes, freeGigabytes) => {
      const plan = cardPlan(filmedWith({ freeGigabytes }), minutes);
      expect((plan.spareGigabytes ?? 0) >= 0).toBe(freeGigabytes - 2 >= plan.gigabytes || Math.abs(freeGigabytes - 2 - plan.gigabytes) < 1e-9);
      expect(cardInWords(filmedWith({ freeGigabytes }), minutes)[1]?.includes("too little")).toBe((plan.spareGigabytes ?? 0) < 0);
    }));
  });

  it("count the shots of the episode when no minutes are handed in", () => {
    const newId = countingIds("c-");
    const block = emptyBlock(newId, "exercise", { lines: [newLine(newId, "shot", "side, sets 1-3: a")] });
    expect(cardPlan(emptyEpisode(newId, { blocks: [block] })).minutes).toBeCloseTo((44 * 3) / 60);
  });
});
