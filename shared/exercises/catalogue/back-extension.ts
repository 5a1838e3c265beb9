import { cue, familyOf, fault, swap } from "../write";

export const backExtension = familyOf("back-extension", [
  {
    id: "back-extension", name: "Back extension",
    otherNames: ["hyperextension", "45-degree back extension", "hip extension on the bench", "roman chair extension", "back raise"],
    equipment: ["back-extension bench"], station: "back-extension bench",
    direct: ["low back", "glutes"], indirect: ["hamstrings", "adductors"],
    joints: "multi", loadedJoints: ["hip", "low back"],
    sides: "both together", position: "lying face down", tempo: "2-0-1-1", setupSeconds: 30,
    cues: [
      cue("Pad just below the hip crease", "side", "insert"),
      cue("Fold at the hips, back long", "side"),
      cue("Come up to a straight line and stop", "side"),
      cue("Cross the arms over the chest", "front", "side"),
    ],
    avoid: [
      fault("Rising past the straight line", "squeeze the glutes and stop level", "side"),
      fault("Swinging up with speed", "take two seconds each way", "side"),
    ],
    cautions: ["Dizzy with the head low: rest, rise slowly, and choose a bridge instead."],
    substitutes: [swap("back-extension bench", "prone-back-extension")],
  },
  {
    id: "weighted-back-extension", name: "Weighted back extension",
    otherNames: ["loaded back extension", "back extension with a plate", "weighted hyperextension"],
    equipment: ["back-extension bench", "dumbbell"], station: "back-extension bench",
    direct: ["low back", "glutes"], indirect: ["hamstrings", "adductors", "upper back"],
    joints: "multi", loadedJoints: ["hip", "low back", "upper back"],
    sides: "both together", position: "lying face down", tempo: "3-0-1-1", setupSeconds: 40,
    spineLoaded: true,
    cues: [
      cue("Hug the weight to the breastbone", "side", "front"),
      cue("Lower for three seconds with one back shape", "side"),
      cue("Hips do the lifting, ribs stay down", "side"),
    ],
    avoid: [
      fault("Holding the weight behind the head", "keep it at the chest", "side", "front"),
      fault("Adding weight before bodyweight reps are calm", "earn fifteen smooth reps first", "side"),
    ],
    cautions: ["Have someone hand you the weight, or pick it up from a box in front."],
    substitutes: [swap("back-extension bench", "dumbbell-romanian-deadlift"), swap("dumbbell", "back-extension")],
  },
  {
    id: "back-extension-hold", name: "Back extension hold",
    otherNames: ["static back extension", "isometric back extension", "back extension plank"],
    equipment: ["back-extension bench"], station: "back-extension bench",
    direct: ["low back"], indirect: ["glutes", "hamstrings"],
    joints: "multi", loadedJoints: ["hip", "low back"],
    sides: "both together", position: "lying face down", tempo: null, setupSeconds: 30,
    cues: [
      cue("Find the straight line and stay", "side"),
      cue("Glutes on, eyes on the floor", "side", "three-quarter"),
      cue("Count your breaths instead of seconds", "front", "side"),
    ],
    avoid: [
      fault("Sagging and still counting", "finish the hold when the line goes", "side"),
      fault("Craning up to look in the mirror", "keep the neck in line with the back", "side"),
    ],
    cautions: ["A dull tiredness is fine; sharp or spreading back pain is not: come up and stop."],
    substitutes: [swap("back-extension bench", "bird-dog")],
  },
  {
    id: "prone-back-extension", name: "Floor back extension",
    otherNames: ["prone back extension", "superman", "prone back raise", "lying back extension"],
    equipment: ["mat"], station: "mat area",
    direct: ["low back"], indirect: ["glutes", "upper back", "rear shoulder"],
    joints: "multi", loadedJoints: ["low back", "hip", "shoulder"],
    sides: "both together", position: "lying face down", tempo: "2-0-1-2", setupSeconds: 10,
    cues: [
      cue("Press the hips into the mat", "side"),
      cue("Lengthen first, then hover the chest low", "side"),
      cue("Keep the chin down, look at the mat", "side", "front"),
    ],
    avoid: [
      fault("Chasing height", "lift a hand's width and hold", "side"),
      fault("Jerking arms and legs up together", "raise only the arms, or only the legs", "side"),
    ],
    cautions: ["Not during pregnancy; bird dogs are the usual stand-in."],
    substitutes: [swap("mat", "back-extension")],
  },
]);
