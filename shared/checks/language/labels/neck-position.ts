import type { LabelReader } from "../types";

/** The neck is forced, loaded or steered out of line. */
export const neckPosition: LabelReader = {
  label: "neck-position",
  ruling: "The neck is forced or loaded out of line.",
  patterns: [
    { find: "<crank> ~2 <neck> ~2", without: "chin-up|chin_up|headband", family: "hinge", example: "Crank your neck back to keep the chest up." },
    { find: "pull|pulling|yank|haul|drag on|your|at|the ~1 neck|head", only: ["core", "cooldown-stretch", "mobility-warmup", "general"], without: "chin_to|gently|tall", family: "core", example: "Pull on your head to get higher." },
    { find: "use|with your|one|both hand%|arm ~1 to press|push|pull|force|crank ~2 <neck>", family: "cooldown-stretch", example: "Use your hand to force the head further." },
    { find: "grab|take|hold your|the neck|head ~1 and pull|yank|haul|drag|crank", only: ["core", "cooldown-stretch"], family: "core", example: "Grab your head and pull it up." },
    { find: "look|stare|eyes|gaze|looking|staring ~2 up ~1 at|to|towards|toward|on the <ceiling>", only: ["hinge", "squat", "row", "kettlebell-swing", "lunge-step", "horizontal-press", "back-extension", "carry", "leg-machine"], family: "hinge", example: "Look up at the ceiling as you pull." },
    { find: "look|stare|eyes|gaze|looking|staring ~2 at|to|towards|toward|on the <ceiling>", only: ["hinge", "squat", "row", "kettlebell-swing", "back-extension"], family: "squat", example: "Eyes on the ceiling all the way down." },
    { find: "neck|head|chin ~2 bent|cranked|craned|thrown|tipped|tilted|pushed|jutted|thrust|jammed back|backwards|forward|forwards|up", without: "slightly|little|gently", only: ["hinge", "squat", "row", "overhead-press", "vertical-pull", "carry", "core", "kettlebell-swing", "back-extension", "horizontal-press"], family: "hinge", example: "Keep the neck cranked back from start to end." },
    { find: "stick|poke|jut|thrust|push|shove|crane|throw your|the neck|head|chin|face|nose ~2 out|forward|forwards|through|back|up", without: "slightly|little|gently|floor", not: ["mobility-warmup", "bridge-thrust"], family: "vertical-pull", example: "Stick your chin forward to reach the bar." },
    { find: "bar|barbell|press|pull|pulling|pressing|handle|lower|bring|pulldown%|touch|weight|it ~6 behind your|the neck|head", only: ["overhead-press", "vertical-pull", "squat", "cable"], without: "hands|towel|in_front_of", family: "vertical-pull", example: "Pull the bar down behind the neck." },
    { find: "rest|put|sit|set|place|lay|park ~3 bar|barbell ~2 on|across your|the neck|bony|vertebra*", family: "squat", example: "Rest the bar on your neck." },
    { find: "bar|handle|pull|bring|lower|touch|it ~4 to|onto|towards ~1 back_of|nape ~3", only: ["vertical-pull", "overhead-press"], with: "neck|nape|head|skull", without: "not|back_of_the_bench", family: "vertical-pull", example: "Bring the handle to the back of the neck." },
    { find: "bar|barbell ~4 on|across|over|against your|the neck", only: ["squat", "lunge-step", "hinge"], family: "squat", example: "Let the bar sit right on the neck." },
    { find: "chin ~1 to|on|into your|the chest", only: ["vertical-pull", "overhead-press", "squat", "row", "hinge"], family: "vertical-pull", example: "Chin to your chest and pull the bar to the nape." },
    { find: "whip|fling|throw|spin|swing|roll ~2 <neck> ~3 fast|quick|round|around|circles|hard", without: "slow*|gentle|gently|easy", only: ["mobility-warmup", "cooldown-stretch", "general"], with: "fast|quick*|whip|fling|hard|speed|all_the_way", family: "mobility-warmup", example: "Spin the head round fast in big circles." },
    { find: "push|press|drive|balance|bridge ~2 through|on|onto|with your|the neck|head", only: ["bridge-thrust", "core"], family: "bridge-thrust", example: "Push through your head to get the hips up." },
    { find: "lift|raise|peel your|the head ~3 off ~2 bench|pad", only: ["horizontal-press"], family: "horizontal-press", example: "Lift your head off the bench on the hard ones." },
  ],
  habits: [
    { find: "keep+ <your> head on|down ~2 bench|pad|floor|down", only: ["horizontal-press", "leg-machine"], family: "horizontal-press", example: "No need to keep your head on the bench." },
    { find: "neutral|straight|long neck", family: "hinge", example: "Forget about a neutral neck." },
  ],
  silent: [
    { text: "Chin slightly tucked, eyes on the floor ahead.", family: "hinge" },
    { text: "Don't pull on your neck.", family: "core" },
    { text: "Bar to the collarbones, never behind the neck.", family: "vertical-pull" },
    { text: "Hands behind the head, elbows wide.", family: "core" },
    { text: "Move the head back a little so the bar can pass.", family: "overhead-press" },
    { text: "Slow half circles with the neck, without pain.", family: "mobility-warmup" },
  ],
};
