import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { JOINTS, jointsIn } from "../../../shared/exercises";

describe("jointsIn", () => {
  it.each<[string, string[]]>([
    ["Ten slow circles each: ankles, knees, hips, upper back, shoulders, elbows, wrists", ["ankle", "knee", "hip", "upper back", "shoulder", "elbow", "wrist"]],
    ["T-spine and ankles", ["ankle", "upper back"]],
    ["Thoracic rotations, then the lower back", ["low back", "upper back"]],
    ["Wake up the lumbar spine", ["low back"]],
    ["Move the whole spine, one bone at a time", ["low back", "upper back"]],
    ["shoulder blades together, neck long", ["upper back", "neck"]],
    ["Hip circles and leg swings", ["hip"]],
    ["The small of your back", ["low back"]],
    ["Every joint from the floor up", [...JOINTS]],
    ["Joint by joint, head to toe", [...JOINTS]],
  ])("in %j finds %j", (text, expected) => {
    expect(jointsIn(text)).toEqual(expected);
  });

  it.each(["Step back and come back up", "Half-kneeling on a pad", "Lie on your back", "", "Warm up for five minutes", "ship, whip, chipped"])("finds none in %j", (text) => {
    expect(jointsIn(text)).toEqual([]);
  });

  it("answers in order from the floor up whatever the order of the text", () => {
    fc.assert(fc.property(fc.shuffledSubarray([...JOINTS]), (joints) => {
      expect(jointsIn(joints.join(", "))).toEqual(JOINTS.filter((joint) => joints.includes(joint)));
    }), { seed: 3 });
  });
});
