import type { LabelReader } from "../types";

const RISKY = ["squat", "hinge", "lunge-step", "row", "overhead-press", "plyometric", "kettlebell-swing", "carry", "horizontal-press", "general", "core", "cable"];

/** Reps past technical breakdown, or to collapse, where that can injure. */
export const failureUnsafe: LabelReader = {
  label: "failure-unsafe",
  ruling: "Repetitions go on after the form or the strength is gone, where that can injure.",
  patterns: [
    { find: "<form> ~1 doesn't|does_not|don't|won't|isn't|no_longer ~1 matter|matters|count|important", as: "flat", family: "row", example: "Form doesn't matter on the last ones." },
    { find: "forget|never_mind|ignore|don't_worry_about|who_cares_about|stop_worrying_about|sacrifice|to_hell_with|throw_away|throw_out|screw ~3 <form>", as: "flat", without: "don't_forget|never_forget|never_sacrifice|don't_sacrifice|don't_ignore", family: "hinge", example: "Forget about form and get the reps in." },
    { find: "<continue_reps> ~8 <form> ~2 goes|breaks|slips|fails|is_gone|falls_apart|breaks_down|crumbles|has_gone|goes_out|disappears|gone|went", without: "stop|until_your|until_the|until_form|until_technique|before", as: "flat", family: "kettlebell-swing", example: "Keep going after the form is gone." },
    { find: "until|till you|your_legs|your_arms|your_back|the_bar|everything|your_body ~1 drop|collapse|fall|falls|fold|puke|throw_up|vomit|black_out|pass_out|can't_stand|can't_walk|cannot_stand|cannot_walk|crumple|give_out|gives_out|give_way|buckle|can't_get_up|pins_you|stays_down|hit_the_floor|are_on_the_floor", without: "stop_before|not|never|don't|light|back_off", family: "lunge-step", example: "Lunge until you drop." },
    { find: "to|until|till|past|beyond total|complete|absolute|utter|real|true|full|muscular|technical|and_past|and_beyond? failure", only: ["squat", "hinge", "lunge-step", "row", "overhead-press", "plyometric", "kettlebell-swing", "carry"], without: "short_of|before|not|never|don't|safeties|machine|cable|close|one_or_two|wall|bodyweight|supported", family: "squat", example: "Squat to absolute failure." },
    { find: "to failure", only: ["squat", "hinge", "overhead-press", "plyometric", "kettlebell-swing", "carry"], without: "short_of|before|not|never|don't|safeties|machine|cable|close|short|wall|bodyweight|lateral|goblet", family: "overhead-press", example: "Press to failure on every set." },
    { find: "to failure", only: ["row", "lunge-step", "horizontal-press"], with: "bar|barbell|on_your_back|heavy_dumbbell%", without: "short_of|before|not|never|don't|safeties|machine|cable|close|short|push-up%|spotter", family: "horizontal-press", example: "Take the bar to failure every time." },
    { find: "ugly|sloppy|messy|horrible|crooked|wonky|dirty reps|rep|ones ~3 count|counts|fine|ok|okay|welcome|still|all_right|where", only: RISKY, family: "hinge", example: "Ugly reps still count." },
    { find: "until|till ~3 comes_down|falls|drops|lands|gives_up ~1 on_its_own|by_itself|on_you|on_your_own", only: RISKY, without: "never|not|don't|safeties|timer", family: "overhead-press", example: "Press until the bar drops by itself." },
    { find: "no_matter_how|however ~1 ugly|sloppy|messy|bad|crooked|wobbly|horrible", as: "flat", only: RISKY, without: "never|not_matter|don't|stop", family: "squat", example: "Get the rep, no matter how ugly." },
    { find: "grind+ ~3 until|till it|you|the_bar|nothing ~2 stays|stops|die|won't|stuck|fail|on_your_chest|moves", as: "flat", only: RISKY, without: "push-up%|machine|cable|never|don't|not|no", family: "horizontal-press", example: "Grind until the bar won't move." },
    { find: "when|until|till|after you ~1 can't|cannot|physically_can't ~3 peel|move|lift|control|hold|stand|get|budge|pick", as: "flat", only: ["squat", "hinge", "overhead-press", "kettlebell-swing", "plyometric", "lunge-step"], without: "stop_when|before|rest_when|then_stop|end", family: "hinge", example: "We finish when you can't move it at all." },
    { find: "<form> ~3 gone|mush|rubbish|shot|broken|toast ~.3 <continue_reps>", as: "flat", without: "stop", family: "kettlebell-swing", example: "Technique gone? Keep swinging, another ten." },
  ],
  habits: [
    { find: "good|clean|tidy|perfect|strict form|technique|reps", only: RISKY, family: "hinge", example: "Don't worry about clean reps now." },
  ],
  silent: [
    { text: "Stop two reps short of failure.", family: "squat" },
    { text: "When the form goes, the set is over.", family: "hinge" },
    { text: "Go to failure here, the machine has stops.", family: "leg-machine" },
    { text: "Never grind until the bar sticks.", family: "horizontal-press" },
    { text: "Put the bells down before your grip gives out.", family: "carry" },
    { text: "Push-ups to failure are fine.", family: "horizontal-press" },
  ],
};
