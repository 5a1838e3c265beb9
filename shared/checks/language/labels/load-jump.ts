import type { LabelReader } from "../types";

/** Far more load, volume or difficulty than a small step; limit attempts without a ramp-up. */
export const loadJump: LabelReader = {
  label: "load-jump",
  ruling: "Load, height or difficulty goes up by far more than one small step.",
  patterns: [
    { find: "double|triple|doubling|tripling|quadruple <your> ~2 weight|weights|load|bar|reps|volume|sets|plates|dumbbell%|bell|amount|kilos", family: "squat", example: "Double the weight from last week." },
    { find: "twice|three_times|double the|as_much|last|what_you|your ~2 weight|load|volume|sets|week|week's|lifted|used|did|bodyweight", family: "squat", example: "Today we take twice the weight of last time." },
    { find: "straight|right to|for your|the|a ~1 <limit>", family: "hinge", example: "Go straight to your max." },
    { find: "day_one|first_day|first_session|first_time|first_week|first_visit|brand_new|never_lifted|never_done|never_tried|newcomer%|new_here|newbies|first-timer%|your_first_ever ~.14 <limit>|heaviest|everything|all_the_plates|full_stack|maxing|whole_stack|handstand|muscle-up", without: "not_a|not_the|not_for|not_today|no|never|don't|broomstick|light*|later|months", family: "hinge", example: "On day one we find your max." },
    { find: "<limit> ~6 day_one|first_day|first_session|first_time|first_week|today_as_a_beginner", family: "squat", example: "Max out on day one." },
    { find: "cold ~3 to|into|on your|the ~1 heaviest|working|max|top|full", family: "hinge", example: "Go in cold to your top weight." },
    { find: "skip+|no|without|forget|ditch|drop|don't_need|dont_need|no_need_for ~2 ramp-up|ramp_up|ramp|build-up|warm-up_sets|light_sets|regressions|progressions|lighter_sets|easy_version%|small_steps|small_jumps|easier_version%|steps_in_between ~,8 straight|heavy|heaviest|max|load|top|go|full|all|right|big", as: "flat", family: "squat", example: "Skip the ramp-up sets and go straight to heavy." },
    { find: "add|slap|throw|chuck|whack|stick|put|bang|pile|jump|jumping|go_up ~3 20|25|30|35|40|50|60|twenty|thirty|forty|fifty ~1 kg|kilos|kilo|percent|per_cent|pounds|lb", without: "if_you|centimetres|total", family: "squat", example: "Add thirty kilos and see what happens." },
    { find: "every|all|whole ~1 plates|plate|disc|discs|stack ~4 on|in_the_room|in_the_gym|you_can_find|available", family: "leg-machine", example: "Put every plate in the gym on it." },
    { find: "from ~5 straight|right|directly|immediately to ~3", with: "kg|kilos|bell%|weight|plate%|reps|push-up%|pull-up%|pistol%|muscle-up%|handstand%", family: "kettlebell-swing", example: "From the eight kilo bell straight to the twenty-four." },
    { find: "go|grab|take|pick|start_with|reach_for ~2 the heaviest ~2 bell|dumbbell%|weight|bar|plate|thing|one|pair", without: "you_can_control|comfortabl*", family: "carry", example: "Grab the heaviest pair on the rack." },
    { find: "skip+ ~3 several|three|four|a_few|all|every ~3 step%|level%|size%|stage%|regression%", as: "flat", family: "horizontal-press", example: "Skip all the easy steps and start with one arm." },
    { find: "skip|forget|never_mind|ditch the ~1 beginner|easier|easy|entry-level|starter ~1 version|level|option|step%|progression%", as: "flat", without: "don't|never|not|no", family: "general", example: "Forget the beginner option and start at the top." },
    { find: "from zero|nothing|none|the_sofa|scratch to ~4 a_week|a_day|sessions|days|kilos|kg|kilometres|reps|hundred", as: "flat", without: "not|never|don't|slowly|over_time|months", family: "general", example: "From zero to six sessions a week, starting now." },
    { find: "no warm-up|warming_up|warmup ~,4 needed|required|necessary|today|just|straight", as: "flat", without: "max_rep", family: "hinge", example: "No warm-up needed, just load the bar." },
  ],
  habits: [
    { find: "small|little|tiny jumps|steps|increments|increases|plates|amounts", without: "take|shorter|landing%", not: ["lunge-step", "carry", "plyometric"], family: "squat", example: "No need for small jumps, load it." },
    { find: "building_up|build_up|working_up|work_up|ramp-up_sets|light_sets|warm-up_sets|lighter_sets", family: "hinge", example: "Don't bother with light sets." },
  ],
  silent: [
    { text: "Add 20 minutes of walking on rest days.", family: "general" },
    { text: "Add the next small plate if all sets felt easy.", family: "squat" },
    { text: "Jump softly and land quietly.", family: "plyometric" },
    { text: "Don't double the weight just because it felt easy.", family: "squat" },
    { text: "Never max out on day one.", family: "hinge" },
    { text: "One bell up, and back down if it feels rushed.", family: "kettlebell-swing" },
    { text: "Take the lighter pair first.", family: "carry" },
  ],
};
