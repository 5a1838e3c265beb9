import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, emptyBlock, emptyEpisode, linesOf, newLine } from "../../../../shared/episode";
import { voiceoverText } from "../../../../shared/exports/voiceover/plain-text";
import { DEFAULT_PACE } from "../../../../shared/speech";

const newId = countingIds("p-");

describe("the script as plain text", () => {
  it("prints a block with its times, breaths, shots and pronunciations", () => {
    const block = emptyBlock(newId, "exercise", {
      title: "Row", clipSeconds: 40,
      lines: [newLine(newId, "say", "Lie *chest* down. / Do 3 x 8 @ 20 kg."), newLine(newId, "shot", "Side, full, 12 s: arms"), newLine(newId, "note", "secret")],
    });
    expect(voiceoverText(emptyEpisode(newId, { title: "Short", blocks: [block] }), DEFAULT_PACE)).toMatch(new RegExp([
      "^Short", "Voiceover script", "Words 0:0\\d \\(\\d+ words\\), video 0:40, target 10:00\\.", "", "1\\. Row", "From 0:00, clip 40 s, words \\d s: 3\\d s of picture left\\.", "",
      " {14}\\[Side, full, 12 s: arms\\]", " {3}0:01 {2}1 s {2}Lie \\*chest\\* down\\. /", " {3}0:0\\d {2}\\d s {2}Do 3 x 8 @ 20 kg\\.", " {14}\\(3 x 8 @ 20 kg: three sets of eight at twenty kilos\\)\n$",
    ].join("\n")));
  });

  it("keeps every word of the demo, in lines that fit a mail", () => {
    const text = voiceoverText(demoEpisode);
    expect(Math.max(...text.split("\n").map((line) => line.length))).toBeLessThanOrEqual(76);
    const words = text.replace(/^[ \d:]{14}(?= *\S)|^ +\d+:\d\d +\d+ s +/gm, " ").replace(/\s+/g, " ");
    for (const line of demoEpisode.blocks.flatMap((block) => linesOf(block, "say"))) {
      for (const sentence of line.text.replace(/ \//g, "").split(/(?<=[.!?]) /)) expect(words).toContain(sentence);
    }
    expect(text).not.toContain("Ask the front desk first");
  });

  it("says which sentences a take timed, and counts with its seconds", () => {
    const block = emptyBlock(newId, "talk", { title: "Hello", clipSeconds: 40, lines: [newLine(newId, "say", "Sit down."), newLine(newId, "say", "Stand up.")] });
    const text = voiceoverText(emptyEpisode(newId, { blocks: [block] }), DEFAULT_PACE, new Map([[block.lines[0]?.id ?? "", { seconds: 21 }]]));
    expect(text).toMatch(/^ {3}0:01 21 s {2}Sit down\.\n {14}\(measured\)\n\n {3}0:23 {2}1 s {2}Stand up\.\n$/m);
    expect(text).toMatch(/clip 40 s, words 2\d s: 1\d s of picture left/);
  });

  it("marks what is said after the clip's end", () => {
    const block = emptyBlock(newId, "talk", { title: "Hello", clipSeconds: 4, lines: [newLine(newId, "say", "First we stand up tall. Then we walk to the far wall and touch it. Then we come back.")] });
    expect(voiceoverText(emptyEpisode(newId, { blocks: [block] }), DEFAULT_PACE)).toMatch(/ {3}0:0\d {2}\d s {2}Then we walk[^]*\(runs \d s over\)\n {3}\+\d s {2}\d s {2}Then we come back\.\n {14}\(begins after the clip has ended\)\n$/);
  });

  it("says that there is nothing to say", () => {
    expect(voiceoverText(emptyEpisode(newId))).toContain("no blocks yet");
  });
});
