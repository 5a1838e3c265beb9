import type { LabelReader } from "../types";

const FREE_BAR = ["horizontal-press", "squat", "overhead-press", "arm-isolation", "lunge-step", "general", "leg-machine"];
const HARMLESS = "dumbbell%|cable|bodyweight|deadlift|push-up%|light|empty_bar|broomstick|unless|short|get_help|ask_for|grab_someone|set_the|safeties_up|in_the_tank|left_in_you";

/** A near-limit free-bar lift alone, or with the catch taken away. */
export const noSpotter: LabelReader = {
  label: "no-spotter",
  ruling: "A near-limit free-bar lift is attempted with nothing and nobody to catch it.",
  patterns: [
    { find: "without|no|nobody|don't_need|dont_need|doesn't_need|do_not_need|who_needs|forget|skip|ditch|never_mind|don't_wait_for|don't_bother_with|not_worth|needs_no|need_no|no_need_for ~3 <spotter>", as: "flat", only: FREE_BAR, with: "<limit>", without: HARMLESS, family: "squat", example: "You can max out without a spotter." },
    { find: "nobody|no_one|you_don't|you_dont needs|need a|any|the ~1 spotter|helper|spot|safeties|safety_bars|pins|safety_arms", as: "flat", only: FREE_BAR, without: HARMLESS, family: "horizontal-press", example: "You don't need a spotter, trust yourself." },
    { find: "<remove> ~4 safety_bars|safety_arms|safety_pins|safeties|spotter_arms|catch_bars|catches|safety_stops|safety_catches|safety_straps|metal_arms|rack_arms|stops", as: "flat", only: FREE_BAR, without: "check|height|set|under|below|just|level|unless|don't_lower|never_remove|don't_remove|never_take|don't_take", family: "squat", example: "Take the safety arms off, they get in the way." },
    { find: "<limit> ~,8 <alone>", as: "flat", only: FREE_BAR, without: `${HARMLESS}|don't|never|not|no`, family: "horizontal-press", example: "Max out by yourself tonight." },
    { find: "<alone> ~.10 <limit>", as: "flat", only: FREE_BAR, without: `${HARMLESS}|don't|never|not|no|two_reps|safeties|dumbbells`, family: "horizontal-press", example: "Home alone? Perfect time to bench to failure." },
  ],
  habits: [
    { find: "<spotter>|spotting", only: FREE_BAR, with: "<limit>", without: HARMLESS, family: "squat", example: "A spotter is for beginners, go for your max." },
  ],
  silent: [
    { text: "Don't bench to failure without safeties.", family: "horizontal-press" },
    { text: "Never bench heavy without a spotter.", family: "horizontal-press" },
    { text: "Training alone? Leave two in the tank and set the safeties.", family: "horizontal-press" },
    { text: "No spotter needed for dumbbells this light.", family: "horizontal-press" },
    { text: "Set the safety arms just below your chest.", family: "horizontal-press" },
    { text: "No max attempts unless someone is watching.", family: "squat" },
  ],
};
