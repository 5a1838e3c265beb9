import type { LabelReader } from "../types";

/** Rebounding out of the end of a loaded range, heaving a load, bouncing into a stretch. */
export const ballisticOrBounce: LabelReader = {
  label: "ballistic-or-bounce",
  ruling: "The load or the stretch rebounds, heaves or drops out of the end of its range.",
  patterns: [
    { find: "bounce+|rebound+|ricochet+|trampoline+ ~3 off|out_of|from|against ~4 chest|bottom|floor|hole|ribs|pad|stops|heels|calves|bench|pins|box|sternum|knees|thighs|belly|safeties", not: ["plyometric"], family: "horizontal-press", example: "Bounce the bar off your chest." },
    { find: "bounce+|rebound+ ~1 at|out the? ~1 bottom|end|top", not: ["plyometric"], family: "squat", example: "Bounce at the bottom to get up." },
    { find: "bounce+|bob+|jerk+|lurch+|lunge|throw|fling|bouncy ~3 into|in|through|to|deeper ~4 stretch|toe|toes|fold|it|floor|deeper|range|split%", only: ["cooldown-stretch", "mobility-warmup"], family: "cooldown-stretch", example: "Bounce into the stretch to get deeper." },
    { find: "bounce|bob|bounces|bouncing|pulse ~4 loosen|deeper|further|faster|harder|lower|quick|quickly", only: ["cooldown-stretch"], family: "cooldown-stretch", example: "Bounce hard to get further." },
    { find: "bob+|bounce+|jerk+|pulse+|rock+ ~1 up_and_down|in_and_out|back_and_forth", only: ["cooldown-stretch"], family: "cooldown-stretch", example: "Bob up and down over the front leg." },
    { find: "bounce|bob|bouncing|bobbing", only: ["cooldown-stretch"], without: "back_from|ball", family: "cooldown-stretch", example: "Bob over the front leg and let it loosen." },
    { find: "dive-bomb+|divebomb+|free-fall+|freefall+", not: ["plyometric"], family: "squat", example: "Dive-bomb into the bottom." },
    { find: "small|little|quick|fast pulses|bounces|bobs", only: ["cooldown-stretch"], family: "cooldown-stretch", example: "Add small fast pulses at the end of the stretch." },
    { find: "use|using|catch|ride|steal|borrow|grab ~3 bounce|rebound|recoil|momentum|swing", not: ["plyometric", "kettlebell-swing", "overhead-press", "mobility-warmup"], family: "hinge", example: "Use the rebound from the floor for the next rep." },
    { find: "heave+|yank+|fling+|hurl+|sling+|lurch+|thrash+|flail+ ~4 bar|weight|weights|bell|bells|dumbbell%|it|them|handle|yourself|body|torso|way|hips|stack|load|chin|rep", not: ["plyometric", "kettlebell-swing", "mobility-warmup", "overhead-press"], family: "row", example: "Heave the bar up with your whole body." },
    { find: "jerk+|swing|swinging|throw|throwing|rock|rocking ~3 bar|weight|weights|dumbbell%|body|torso|hips|trunk|handle|stack|load|chin|yourself|way ~2 up|back|off|to|over|into|backwards|for", not: ["plyometric", "kettlebell-swing", "mobility-warmup", "carry", "overhead-press"], family: "arm-isolation", example: "Swing the weight up with your hips." },
    { find: "kip|kipping|swing_up|jerk_up|jerk_and_swing|thrash_about", only: ["vertical-pull"], family: "vertical-pull", example: "Jerk and swing to the bar if you are tired." },
    { find: "let|letting|just ~1 it|bar|weight|weights|sled|bell|them|yourself ~2 drop|crash|fall|plummet|free-fall ~3 bounce|chest|stack|floor|bottom|rebound", not: ["plyometric", "carry"], family: "horizontal-press", example: "Let the bar drop to the chest and fire it back." },
    { find: "drop|fall|dive|crash|plummet|divebomb ~2 into|to|straight_into ~2 bottom|hole|hang|full_hang|dead_hang", not: ["plyometric"], family: "vertical-pull", example: "Drop to the bottom and catch yourself." },
    { find: "jerk|yank|rip|snatch <your> bar|barbell|weight ~2 off|from|up ~1 floor|ground", only: ["hinge", "row"], family: "hinge", example: "Yank the bar off the floor." },
    { find: "pump|thrust|fling|throw|shove|buck your|the hips|belly|back|pelvis ~2 to|under|into|like|at|for|behind", only: ["row", "arm-isolation", "vertical-pull", "cable"], family: "row", example: "Fling the hips under to get the bar moving." },
  ],
  silent: [
    { text: "Don't bounce the bar off your chest.", family: "horizontal-press" },
    { text: "Avoid bouncing out of the bottom.", family: "squat" },
    { text: "Small springy hops to wake up the ankles.", family: "plyometric" },
    { text: "Swing the bell with the hips.", family: "kettlebell-swing" },
    { text: "Swing the leg forward and back, easily.", family: "mobility-warmup" },
    { text: "If you have to swing it, the weight is too heavy.", family: "arm-isolation" },
    { text: "No bouncing, just sink.", family: "cooldown-stretch" },
    { text: "Lower with control instead of bouncing at the bottom.", family: "squat" },
  ],
};
