import type { LabelReader } from "../types";

/** The low back rounds, sags or is wrung while it carries something. */
export const spineUnderLoad: LabelReader = {
  label: "spine-under-load",
  ruling: "The low back is asked or allowed to round, sag or twist by force while it carries a load.",
  patterns: [
    { find: "<let> <your> ~1 <back> ~2 <round>", loaded: true, family: "hinge", example: "Let your lower back round as you reach for the bar." },
    { find: "<lowback> ~1 can|may|might|will ~2 <round>", loaded: true, family: "row", example: "Your back can curl a bit here, that is fine." },
    { find: "<your> <lowback> ~1 <round>", as: "state", loaded: true, family: "hinge", example: "It's fine if your back rounds on the last two." },
    { find: "round|curl|hunch|slump|slouch|bend|relax|soften|sag|curve|flex|arch_over <your> ~1 <lowback>", loaded: true, without: "hips|upper", family: "hinge", example: "Round your back to grab the bar." },
    { find: "<lowback> ~1 <rounded>", loaded: true, without: "slight*|small|rounded_up", family: "kettlebell-swing", example: "Back rounded, let the bell hang low." },
    { find: "slump|slumping|hunch|hunching|slouching|slouch|sagging|rounding_over|rounding|stoop|stooping|curling_over", as: "state", loaded: true, without: "shoulders_rounding", only: ["squat", "hinge", "row", "carry", "leg-machine", "kettlebell-swing", "cable", "core", "overhead-press", "lunge-step"], family: "row", example: "Rounding over the bar gives you more stretch, so do it." },
    { find: "curved|rounded|soft|hunched|bent|floppy|slack|loose|sloppy <lowback>", loaded: true, without: "from|flat|fix*|upper|slight*|resting|knees", only: ["squat", "hinge", "row", "carry", "kettlebell-swing"], family: "hinge", example: "Pull it up with a rounded back if that is quicker." },
    { find: "<let> ~4 <lowback> ~1 into ~2 curve|curl|arc|hook|question_mark|c|letter_c|bow", loaded: true, family: "kettlebell-swing", example: "Let the bell pull your spine into a curve." },
    { find: "tuck <your> ~1 tail|tailbone|pelvis|hips ~2 under|hard|right", only: ["squat", "leg-machine"], without: "slightly|gently|little", family: "squat", example: "Tuck your tail hard at the bottom." },
    { find: "hunched|stooped|slouched|slumped|bent_double", loaded: true, only: ["squat", "hinge", "row", "carry", "kettlebell-swing"], family: "carry", example: "Walk stooped with the bells, it saves energy." },
    { find: "hunch|slump|slouch|fold|collapse|crumple|droop|flop|curl_up|curl over|forward|down|around|into", loaded: true, only: ["squat", "hinge", "row", "carry", "leg-machine", "kettlebell-swing", "cable", "overhead-press", "lunge-step"], family: "carry", example: "Slump forward over the bells and shuffle." },
    { find: "sag|slump|droop|collapse|slouch in|through|at the middle|waist|back|trunk", loaded: true, only: ["squat", "hinge", "row", "carry", "kettlebell-swing"], family: "squat", example: "Sag through the middle and stand up again." },
    { find: "<let> ~1 chest|ribs|trunk|shoulders ~1 collapse|fall|sink|drop|slump|puddle|cave ~2 knees|thighs|floor|lap", loaded: true, only: ["row", "hinge", "squat"], family: "row", example: "Let the chest fall to your thighs and pull from there." },
    { find: "hips|pelvis|tailbone|bum|seat|lower_back|low_back|back|spine ~1 roll+|curl+|lift+|peel+|come|comes|tuck+|leave+|round+ ~2 off|under|away ~2 pad|seat|backrest", only: ["leg-machine"], family: "leg-machine", example: "Go so deep that your hips curl off the pad." },
    { find: "twist+|wrench+|whip+|corkscrew+|wring+|spin+|yank+ ~8 fast|faster|hard|harder|quick|quickly|violently|you_can|full_speed|as_hard|top_speed", only: ["core", "cable", "row", "hinge", "kettlebell-swing"], loaded: true, family: "cable", example: "Twist as fast as you can with the handle." },
    { find: "lift|pull|heave|do_it|pick_it_up with your|the back|spine", only: ["hinge", "row", "carry"], family: "hinge", example: "Lift with your back, it is stronger than your legs." },
    { find: "fold+|bend+|hang|hanging like ~2 paper|banana|napkin|straw|noodle|pasta|wet|rag|deckchair|penknife|jackknife|prawn|shrimp", loaded: true, family: "hinge", example: "Fold like a deckchair and grab the bar." },
  ],
  habits: [
    { find: "<straightback>", loaded: true, family: "hinge", example: "No need to keep a flat back with this weight." },
    { find: "keep+ <your> ~1 <lowback> straight|flat|neutral|long|still|set", loaded: true, family: "row", example: "Forget about keeping your back flat." },
  ],
  silent: [
    { text: "Don't let your back round.", family: "hinge" },
    { text: "If your lower back rounds, the set is over.", family: "hinge" },
    { text: "Let your spine round towards the ceiling, then lengthen.", family: "mobility-warmup" },
    { text: "Keep a flat back from the floor to the hip.", family: "hinge" },
    { text: "Stop before your back starts to round.", family: "hinge" },
    { text: "A rounded back is the mistake I see most.", family: "hinge" },
    { text: "Fold forward with nothing in your hands and let the spine hang.", family: "cooldown-stretch" },
    { text: "Bend the knees, not the back.", family: "hinge" },
  ],
};
