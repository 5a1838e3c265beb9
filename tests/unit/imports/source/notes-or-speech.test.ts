import { describe, expect, it } from "vitest";
import { isNotes } from "../../../../shared/imports/source/notes-or-speech";

const NOTES: readonly (readonly [name: string, text: string])[] = [
  ["no bullet and no empty line", "Leg day\nWarm up\n5 min bike\n10 leg swings each side\nFront squat 4x5 @ 60 kg\nelbows up\nRDL 3x8 @ 70 kg\nBSS 3x10/side 2x12 kg\nCalf raise 3x15 @ 40 kg\nCool-down\nhamstring stretch 1 min"],
  ["an empty line between parts", "Warm-up\n5 min bike\n\nGoblet squat 3x10 @ 16 kg\nSplit squat 3x8/side 2x14kg\nSuperset with calf raise 3x15\nCool down - hips, 2 min"],
  ["bullets", "- goblet squats\n- push-ups\n- plank"],
  ["numbers with a dot", "1. Squat 3x8\nStand tall, feet shoulder width. Sit down between your heels and keep the whole foot on the floor.\n2. Row 3x10\nPull your elbows to your ribs. Do not jerk the weight."],
  ["labels", "Goblet squat\ncue: elbows in\navoid: rushing the way down"],
  ["names and schemes alone", "squat 5x5\nbench 5x5\nrow 5x5"],
  ["names alone, short", "Warm up\nGoblet squat\nPush-up\nPlank\nCool down"],
  ["a greeting around them", "hello and welcome back to the channel\ntoday is all about grip\n\ndead hang 3x30s\nfarmers walk 4x40m 2x28kg\nplate pinch 3x20s/side\n\nthanks for watching, subscribe"],
  ["a table", "Exercise\tSets\tReps\tRest\nBack squat\t3\t5\t3 min\nBench press\t3\t5\t3 min"],
  ["emoji", "💪 Goblet squat 3x10\n💪 Push ups 3xmax\n🔥 Swings 5x20"],
  ["lines that end in a small word", "Plank\n3 x 40 s\nroom 12 is free at 7\n- hold on"],
];

const SPEECH: readonly (readonly [name: string, text: string])[] = [
  ["one line", "okay first up goblet squats three sets of ten at twenty kilos and keep your chest up"],
  ["broken every few seconds", "okay hello everyone welcome back today\nwe train legs so let's warm up first ten\nleg swings each side and ten hip circles\nright first exercise goblet squats three\nsets of eight no sorry ten at twenty kilos\nwith ninety seconds rest keep your chest\nup don't let your knees cave in"],
  ["broken every four words", "first up goblet squats\nthree sets of eight\nwith twenty kilos keep\nyour chest up and\ndon't let your knees\ncave in then we've\ngot push ups three\nsets of ten and\nthat's it for today"],
  ["figures, machine made", "so next is the row 3 sets of 10\nat 40 kilos and you want to pull\nthe bar to your belly and then we\nrest for 90 seconds and go again\nand what I see a lot is people who\njerk the weight off the floor"],
  ["sentences with signs", "First up, the goblet squat. Three sets of ten with twenty kilos, and rest for ninety seconds in between.\nKeep your chest tall and let the knees follow the toes, all the way down and all the way up again.\nThen we go to the floor for push-ups, three sets of twelve, and keep your body in one line."],
  ["a digression", "i went to the shop and bought\na coat it was raining the whole\nday and then i came home and we\nhad some tea with my neighbour"],
  ["paragraphs", "Last week I told you about the deadlift, and many of you asked what to do when the bar is too heavy to hold.\n\nSo today we look at grip, and we start with a dead hang for thirty seconds, three times."],
];

describe("notes or speech", () => {
  it.each(NOTES)("takes for notes: %s", (_, text) => {
    expect(isNotes(text)).toBe(true);
  });

  it.each(SPEECH)("takes for speech: %s", (_, text) => {
    expect(isNotes(text)).toBe(false);
  });
});
