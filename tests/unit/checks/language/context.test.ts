import { describe, expect, it } from "vitest";
import { readCue, type CueAudience, type CueInput } from "../../../../shared/checks";
import { analyse, readGrammar } from "../../../../shared/checks/language/grammar";
import { nearestLines } from "../../../../shared/checks/language";

const line = (text: string, family: string, audience: CueAudience = "general"): CueInput => ({ text, family, slot: "voiceover", audience, exercise: null });
const read = (text: string, family: string): string[] => readGrammar(analyse(text), line(text, family)).found.map(({ label }) => label);

/** Each pair differs in one turn of phrase only. */
describe("a turn of phrase decides", () => {
  it.each([
    ["a prohibition", "Let your back round.", "Don't let your back round.", "hinge", "spine-under-load"],
    ["an alternative turned down", "Bounce the bar off your chest.", "Pause rather than bounce the bar off your chest.", "horizontal-press", "ballistic-or-bounce"],
    ["a condition with a stop rule", "Don't worry if your knees cave in.", "If your knees cave in, take less weight.", "squat", "knee-tracking"],
    ["a condition that waves on", "If your knee hurts, push through it.", "If your knee hurts, rack it.", "squat", "pain-push"],
    ["a habit put down", "No need to keep a flat back.", "You need to keep a flat back.", "hinge", "spine-under-load"],
    ["a habit called overrated", "A flat back is overrated.", "A flat back is everything.", "row", "spine-under-load"],
    ["two negations", "Forget to breathe until the last rep is done.", "Don't forget to breathe until the last rep is done.", "squat", "breath-hold"],
    ["somebody else's words", "Hold your breath for the whole set.", "Somebody posted \"hold your breath for the whole set\" again. Breathe.", "squat", "breath-hold"],
    ["a belief taken up after all", "My old coach used to say \"bounce it off your chest\", and he was right.", "My old coach used to say \"bounce it off your chest\", and I paid for it.", "horizontal-press", "ballistic-or-bounce"],
    ["a safe start let go", "Flat back for five reps, then anything goes.", "Flat back for five reps, then rest.", "hinge", "spine-under-load"],
    ["a joke taken back", "Just kidding, let your back round.", "Let your back round. Just kidding, keep it long and stop when it bends.", "hinge", "spine-under-load"],
    ["what a fault does", "Bounce at the bottom.", "Bouncing at the bottom only tires the knees.", "squat", "ballistic-or-bounce"],
    ["the thing a condition leads to", "If the low box was easy, go straight to the highest.", "If you go straight to the highest, you skip what the low box teaches.", "plyometric", "load-jump"],
    ["what is dropped", "Forget keeping your back flat.", "Forget the clock and keep your back flat.", "row", "spine-under-load"],
  ])("%s", (_name, finding, acceptable, family, label) => {
    expect(read(finding, family), finding).toContain(label);
    expect(read(acceptable, family), acceptable).toEqual([]);
  });
});

describe("words with two senses in a gym", () => {
  it.each([
    ["Lock the pins before you load the bar.", "squat"],
    ["Collapse on the sofa when we are done.", "general"],
    ["Feel the burn in your thighs.", "squat"],
    ["Bounce lightly on the balls of your feet.", "plyometric"],
    ["Snap the hips and let the bell float.", "kettlebell-swing"],
    ["Drop the weight by a plate if it slows.", "hinge"],
    ["Hold the stretch for half a minute and breathe.", "cooldown-stretch"],
    ["The code for the gym door is on the fridge.", "general"],
    ["Push the knees out in line with the feet.", "squat"],
    ["Tighten the belly.", "hinge"],
    ["Pull with the back, not with the arms.", "row"],
  ])("acceptable: %s", (text, family) => {
    expect(read(text, family)).toEqual([]);
  });
});

describe("every finding explains itself", () => {
  it("by the label's ruling and a sentence of the same kind", () => {
    const [found] = readCue({ text: "Bounce the bar off your chest.", family: "horizontal-press", slot: "cue", audience: "general", exercise: null });
    expect(found?.ruling).toMatch(/^The load .*\.$/);
    expect(found && nearestLines("Bounce the bar off your chest.", found.label)).toHaveLength(2);
    expect(found?.by).toBe("grammar");
  });
});
