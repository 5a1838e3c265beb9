import { describe, expect, it } from "vitest";
import { lineKind } from "../../../../shared/imports/lines/kind";

const SAID: readonly (readonly [string, ReturnType<typeof lineKind>])[] = [
  ["keep your chest up and your elbows inside your knees", "cue"], ["drive your elbows towards your back pockets", "cue"], ["so push your knees out over your toes", "cue"], ["and squeeze your shoulder blades together at the top", "cue"],
  ["you want to brace your core before you go down and keep your ribs low", "cue"], ["think about pushing the floor away", "cue"], ["make sure your feet are flat on the floor", "cue"], ["i want you to lead with your elbows", "cue"], ["chest up hips back", "cue"], ["ribs down over your hips", "cue"],
  ["on the way up push your hips through", "cue"], ["lower the bar slowly to your chest", "cue"], ["breathe out as the bar goes up", "cue"], ["imagine somebody is about to poke your belly", "cue"],
  ["don't let your heels come off the floor", "avoid"], ["and don't round your back to get the bar lower", "avoid"], ["try not to let your knees fall in", "avoid"], ["never bounce it off your chest", "avoid"], ["you don't want to arch your lower back to get higher", "avoid"], ["avoid rocking back and forth with your trunk", "avoid"],
  ["a common mistake is letting the elbows flare", "avoid"], ["i see people leaning back all the time with their whole back", "avoid"], ["people tend to shrug their shoulders here", "avoid"], ["what i don't want to see is your knees falling in", "avoid"], ["make sure you don't swing your hips", "avoid"],
  ["if your knees hurt squat to a box instead", "caution"], ["if you feel any pain in the front of your shoulder stop", "caution"], ["please set the safety arms if you are alone", "caution"], ["if it pinches lower the cable a little", "caution"], ["talk to your doctor first if you are pregnant", "caution"], ["stop the set if you feel dizzy", "caution"], ["be careful with your neck on this one", "caution"],
  ["i used to do this in the cellar of my parents' house", "say"], ["that was the first set and it felt good", "say"], ["my neighbour's dog is called biscuit", "say"], ["and go", "say"], ["this one is my favourite", "say"], ["we're going to do this for a while", "say"], ["last week somebody asked me about straps", "say"], ["it's a hinge and not a squat", "say"],
];

describe("the kind of a spoken sentence", () => {
  it.each(SAID)("%s: %s", (said, kind) => {
    expect(lineKind(said, "squat", "Goblet squat", false)).toBe(kind);
  });

  it("says figures, whatever the verb", () => {
    expect(lineKind("take the heavy bell and do three sets of eight", "squat", null, true)).toBe("say");
  });
});
