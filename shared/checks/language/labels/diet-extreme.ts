import type { LabelReader } from "../types";

/** Very low intake, skipped meals, dried-out bodies, food as something to earn. */
export const dietExtreme: LabelReader = {
  label: "diet-extreme",
  ruling: "People are told to eat or drink far too little, or to earn or pay back food.",
  patterns: [
    { find: "skip+ ~2 <meal>", as: "flat", without: "rope|don't|do_not|never|not|no|without", family: "general", example: "Skip dinner after this one." },
    { find: "don't|dont|do_not|never|no|not|stop ~1 eat|eating|<meal> ~4 until|till|for|after|today|tonight|before_tomorrow|unless", as: "flat", without: "right_before|just_before|hour|heavy|big|large|comfortable", family: "general", example: "No food until tomorrow." },
    { find: "nothing_but|only|just|live_on|living_on|survive_on|lived_on ~2 water|coffee|black_coffee|tea|black_tea|juice|celery|lettuce|broth|cabbage|grapefruit|ice|ice_cubes|eggs|chicken|shakes|cucumber|rice_cakes|apples|lemon_water|soup|salad ~,6 until|for|this|days|day|week|since|and|all", as: "flat", without: "drink_water|not_only|not_just", family: "general", example: "Nothing but water for two days." },
    { find: "live|living|survive|surviving on ~4", without: "campus|floor|one_leg", with: "week|days|scale%|until|month|lean|shred*|celery|lettuce|juice|shakes|coffee", family: "general", example: "Live on lettuce this week." },
    { find: "fast|fasting|starve|starving ~2 for ~2 days|day|hours|24|36|48|72|week", without: "breathe|move", family: "general", example: "Fast for two days after this." },
    { find: "eat|eating|have nothing|almost_nothing|next_to_nothing ~4 until|till|for|before|today|all_day|after", as: "flat", without: "don't|never|not|comfortable|hour", family: "general", example: "Eat nothing until tomorrow." },
    { find: "fast|fasting ~2 until|till|through", with: "dinner|tomorrow|evening|noon|night|morning|lunch|weekend|weigh-in", without: "breathe|move|walk|run|hip%|as_fast|how_fast|too_fast|feet", family: "general", example: "Fast until dinner tomorrow." },
    { find: "no <meal> ~,2 no <meal>|water|drinks|drinking|snacks", as: "flat", without: "rush|need", family: "general", example: "No breakfast, no lunch, just work." },
    { find: "starve ~1 yourself|it|the|your", family: "general", example: "Starve yourself lean." },
    { find: "under|below|only|just|max|maximum|at_most ~1 300|400|500|600|700|800|900|five_hundred|six_hundred|eight_hundred ~1 calories|kcal|cals|calorie", family: "general", example: "Stay under 800 calories a day." },
    { find: "sweat ~2 out|off ~3 water|weight|kilo%|pound%|kg", family: "general", example: "Sweat off two kilos before the weigh-in." },
    { find: "cut|cutting|stop|restrict|no|limit|avoid|skip|don't_drink|without ~2 water|drinking|fluids ~4 until|till|before|for|during|day|days|photo|weigh-in|hours|training|class|session", as: "flat", without: "no_water_needed|plenty|alcohol|sugary|spill*|on_the_floor", family: "general", example: "No water until the weigh-in." },
    { find: "sip|drink|drinking ~2 as_little|less|nothing ~,8 until|till|from_now|shoot|weigh-in|scale|dry", family: "general", example: "Drink as little as you can until the weigh-in." },
    { find: "dehydrat*|dry_out|bin_bag|bin_liner|sauna_suit|water_pill%|laxative%|diuretic%|crash_diet|crash-diet|juice_cleanse", without: "avoid|not|never|don't|warning|sign%|risk|headache", family: "general", example: "Put the sauna suit on and dry out." },
    { find: "earn+|deserve|deserved|deserves ~3 <treat>", family: "general", example: "Earn your dinner." },
    { find: "burn|work|sweat|run|pay|train off|for|back ~2 that|the|your|last_night's|yesterday's|this ~3 <treat>", without: "nobody|without|need_to|no_one|about", family: "general", example: "Time to burn off that pizza." },
    { find: "no|without <treat> ~1 until|unless|till|for", as: "flat", family: "general", example: "No pudding until you finish." },
    { find: "swap|replace|trade ~3 <meal> ~2 for|with ~2 water|ice|coffee|gum|tea|ice_cubes|shake%|cigarette%|celery", family: "general", example: "Swap your lunch for black coffee." },
  ],
  silent: [
    { text: "Drink when you are thirsty.", family: "general" },
    { text: "Eat before or after, as suits you.", family: "general" },
    { text: "You don't have to earn your dinner.", family: "general" },
    { text: "A lighter meal before you train is fine.", family: "general" },
    { text: "Move fast for ten seconds.", family: "plyometric" },
    { text: "Please don't skip meals to train.", family: "general" },
  ],
};
