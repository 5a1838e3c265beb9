import type { LabelReader } from "../../types";

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
    { find: "<alone>|with_nobody|nobody_needs|no_one_needs|no_partner%|without_him|without_her|no_spotter &.16 <limit>|lifetime_best|heavy_bar|record|grinder|the_most|budge|till_you_can't", only: ["squat", "horizontal-press", "general", "arm-isolation", "overhead-press"], without: "don't|never_train|dumbbell%|if_you're|if_you_train|push-up%|cable%|set_the|safeties_set|pins_set|lighter|light|stop|well_below|short_of|no_max|leave_the_max|save|with_the_pins|pins_are|should", family: "horizontal-press", example: "Alone at home? Work up to the most you can press." },
    { find: "safety|safeties|safety_pins|pins|arms|safety_arms|catchers|catches|stop_levers|levers|stands|spotter_arms ~2 off|out_of_the_way|out_of_the_rack|away|dangling|unset|on_the_floor|in_the_corner|out_the_way", only: ["squat", "horizontal-press", "leg-machine"], without: "don't|never|not|feet_off|arms_down|hang_down|push_off|bounce|spread|stretch_your_arms_out|both_arms|hands|elbows", with: "max|heav*|limit|best|record|rep|load|set|hardest|pr|pb|send|go|lazy|deep*|grind", family: "squat", example: "Lower the arms out of the way and send it." },
    { find: "take|pull|flip|remove|drop|unhook|leave|lower|strip|yank|ditch|lose|swing ~1 <your> ~1 safety|safeties|pins|catchers|stops|stop_levers|levers|spotter_arms|safety_pins|safety_arms|safety_stop ~1 off|out|away|down", without: "don't|never|check|lower_the_pins_to|after|once_the|before", family: "leg-machine", example: "Pull the safety stop out of the machine." },
  ],
  habits: [
    { find: "<spotter>|spotting", only: FREE_BAR, with: "<limit>", without: HARMLESS, family: "squat", example: "A spotter is for beginners, go for your max." },
    { find: "spotter%|spot|safeties|safety_pins|safety_arms|pins|catchers|catches|stop_levers|levers|stops|arms|helper|training_partner|someone_to_stand|stranger_to_stand|somebody_to_stand|anyone_to_stand|someone_to_watch|stand_behind", only: ["squat", "horizontal-press", "leg-machine", "arm-isolation", "general"], without: "high_enough|set_the|swing|arms_straight|push-up%|long_arms|bend", family: "squat", example: "Don't bother with the catchers, you'll get it." },
  ],
  silent: [
    { text: "Don't bench to failure without safeties.", family: "horizontal-press" },
    { text: "Never bench heavy without a spotter.", family: "horizontal-press" },
    { text: "Training alone? Leave two in the tank and set the safeties.", family: "horizontal-press" },
    { text: "No spotter needed for dumbbells this light.", family: "horizontal-press" },
    { text: "Set the safety arms just below your chest.", family: "horizontal-press" },
    { text: "No max attempts unless someone is watching.", family: "squat" },
    { text: "Set the pins just below your lowest point.", family: "squat" },
    { text: "Never bench near your limit without a spotter.", family: "horizontal-press" },
  ],
};
