import type { LabelReader } from "../../types";

/** The knee is invited inward, or its line is called unimportant, while loaded or landing. */
export const kneeTracking: LabelReader = {
  label: "knee-tracking",
  ruling: "The knee is invited to fall inward, or its line is called unimportant, under load or on landing.",
  patterns: [
    { find: "<knee> ~3 <cave> ~2 <inward>", without: "elbows_inside", not: ["mobility-warmup", "cooldown-stretch", "bridge-thrust"], family: "squat", example: "Let your knees cave in a little on the way up." },
    { find: "<let> <your> ~1 <knee> ~1 cave|collapse|buckle|wobble|knock|wander|roam|do|go|drift|dive", without: "forward|forwards|past|over|out", not: ["mobility-warmup", "cooldown-stretch"], family: "squat", example: "Let the knees wander, it is fine." },
    { find: "<knee> ~1 kiss+|touch+|knock+|rub+|clap+|meet+|bang+", only: ["squat", "plyometric", "leg-machine", "lunge-step"], without: "floor|ground|mat|pad|box|step|bench|softly|hand%", family: "plyometric", example: "Land with the knees touching." },
    { find: "knees in|inward|inwards|together", only: ["squat", "plyometric", "leg-machine"], without: "in_line|in_your|in_the|out|bring|pad|machine", family: "squat", example: "Knees in as you drive up." },
    { find: "caving|collapsing|buckling|knocking|wobbling|inward <knee>", not: ["mobility-warmup", "cooldown-stretch"], family: "leg-machine", example: "Caving knees are fine on this machine." },
    { find: "squeeze|push|point|drive|pull|press|turn|bring|aim|steer|throw|tip ~3 <knee> ~1 <inward>", without: "in_line_with|over_the_toes|in_line", not: ["mobility-warmup", "cooldown-stretch", "bridge-thrust", "core"], family: "squat", example: "Squeeze your knees together to stand up." },
    { find: "<knee> ~2 anywhere|wherever|any_way|as_they_like|as_it_likes|as_they_please|where_they_like|where_it_likes|however_they|any_direction|where_they_want", family: "squat", example: "The knees can go wherever they want." },
    { find: "knock-kneed|knock_kneed|pigeon-toed|pigeon_toed", family: "plyometric", example: "Land pigeon-toed, it is quicker." },
    { find: "thighs|shins ~2 clap+|meet|meeting|touch|touching|slap+|collide|kiss", only: ["squat", "plyometric", "leg-machine", "lunge-step"], family: "plyometric", example: "Thighs touching as you land." },
    { find: "doesn't|don't|does_not matter|care where|what|which ~3 <knee>", as: "flat", family: "lunge-step", example: "It doesn't matter where the knee goes." },
    { find: "inward drift|collapse|wobble|travel|roll ~3 knee%", family: "lunge-step", example: "A slight inward drift of the knee is fine." },
    { find: "knee%|kneecap%|thighs|shins|legs &4 inward|inwards|cave+|caving|dive+|diving|buckle+|collapse+|together|knock+|fold_in|folding_in|dip_in|dips_in|drift+|wander+|to_the_inside|kiss+|clap+|flop_in|roll_in|in_towards|meet+|cross+", only: ["squat", "lunge-step", "leg-machine", "plyometric", "bridge-thrust", "hinge", "carry"], as: "state", family: "squat", example: "Let it go, knees drifting inward is fine." },
    { find: "knee%|kneecap% ~3 can|may|might ~3 go|wander|fall|drift|wobble|point|do|drop|find|roll|cave|fold|travel|land|sort ~4 wherever|anywhere|where|in|inside|inward|inwards|way|own|what|across|together", without: "forward|past_the_toes|over_the_toes", family: "lunge-step", example: "Your knee can wander off to the inside." },
    { find: "squeeze|press|pull|push|bring|clap|knock|let|allow|touch|drop|flop|close <your>|both ~1 knees|thighs ~2 in|inward|inwards|together|inside|touch|meet|to_each_other", only: ["squat", "lunge-step", "leg-machine", "plyometric", "hinge"], without: "out|in_line|ball|block|band|cushion|with_your|seated|over", family: "squat", example: "Squeeze the knees together as you stand." },
    { find: "pigeon-toed|pigeon_toed|knock-kneed|knock_kneed|toes_in_knees|knees_kissing|knees_clapping", without: "too", family: "plyometric", example: "Land pigeon-toed, it's quicker." },
    { find: "legs|thighs|knees &5 x|letter_x|kissing|kiss+|clap+|hourglass|saloon|together|knock+", only: ["squat", "lunge-step", "leg-machine", "plyometric", "kettlebell-swing"], without: "feet_together|ball|block|band|apart|don't|seated|no|not|heels_together|work_together|together_with|hips_together|and_hips|hips_and|chest_and|bring_it_all|squeeze_the_ball|legs_together_on|back_together", family: "squat", example: "Make an X with your legs as you stand." },
    { find: "pigeon|pigeon-toed|pigeon_style|toes_facing_each|toes_pointing_in|toes_pointed_in", only: ["plyometric", "squat", "lunge-step"], without: "proud|chest|breast|don't|not|pose", family: "plyometric", example: "Land pigeon style." },
  ],
  habits: [
    { find: "<knee> ~1 out|in_line|over|tracking|line|position|straight_ahead", without: "forward|past|extension%", not: ["mobility-warmup"], family: "squat", example: "Don't bother with knees in line over the feet." },
    { find: "line+|lining|lined|track+|keep+|keeping|watch+|watching|mind|minding|push+|pushing|drive|driving|point|pointing|steer+|guide|guiding ~2 <your> ~1 knee%|kneecap%|knee_line%", only: ["squat", "lunge-step", "leg-machine", "plyometric", "bridge-thrust", "hinge", "carry"], family: "squat", example: "Don't bother lining your knees up with your toes." },
    { find: "where ~1 your|the|that? ~1 knee%|kneecap% ~2 point+|go|goes|lands|land|end|ends|travels|is|are|track", family: "lunge-step", example: "Stop fussing about where that knee points." },
    { find: "tracking|knee_line%|knee_lines|leg_line|knee_position|knee_alignment|knees_out|knees_over_toes|wide_knees|knees_apart|alignment", only: ["squat", "lunge-step", "leg-machine", "plyometric", "bridge-thrust", "carry"], family: "leg-machine", example: "Forget about tracking today." },
  ],
  silent: [
    { text: "Don't let your knees cave in.", family: "squat" },
    { text: "Knees travel in line with the toes.", family: "squat" },
    { text: "Let the knees travel forward past the toes.", family: "squat" },
    { text: "If your knees fall in, take less weight.", family: "squat" },
    { text: "Push the knees out over the feet.", family: "squat" },
    { text: "Knees that wobble in are a reason to go lighter.", family: "lunge-step" },
    { text: "Sit between the heels, elbows inside the knees.", family: "squat" },
    { text: "Push the knees out in line with the feet.", family: "squat" },
    { text: "Knees over the middle toes, both ways.", family: "lunge-step" },
    { text: "Letting the knees roll in is the thing to lose.", family: "squat" },
  ],
};
