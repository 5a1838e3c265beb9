import type { LabelReader } from "../../types";

/** Certainty about a result. */
export const claimGuarantee: LabelReader = {
  label: "claim-guarantee",
  ruling: "A result is stated as certain; results vary.",
  patterns: [
    { find: "guarantee+|guaranteed", with: "<change>|<outcome>|<bodyfat>|results|works|success|slim*|shredded|jacked|toned|tone", without: "guarantee_on|year_guarantee|guarantee_nothing|only_guarantee|two-year|can't_guarantee|not_guaranteed|no_guarantee%|never_guarantee|cannot_guarantee|don't_guarantee|isn't_guaranteed|not_a_guarantee|without_guarantee%|aren't_guaranteed|money_back|sore|feel|sweat|shake|laugh|swear|tired|hate|wobble", family: "general", example: "I guarantee visible results." },
    { find: "nobody|no_one|can't|cannot ~2 guarantee|promise ~,4 but i|we|this ~1 can|do|does|will", as: "flat", family: "general", example: "Nobody can promise anything, but I can." },
    { find: "i|we|i'll|we'll promise ~8 <outcome>", family: "general", example: "I promise you will lose five kilos." },
    { find: "promised|assured|certain results|abs|gains|success", family: "general", example: "Promised results in a month." },
    { find: "results ~1 promised|assured|guaranteed|certain", family: "general", example: "Ten weeks, results promised." },
    { find: "every_single client|person|viewer|member|one|customer ~6 <outcome>|has|gets|does", without: "different|asks|rep", family: "general", example: "Every single client loses a stone." },
    { find: "bank_on_it|no_doubt_about_it|can't_fail|cannot_fail|never_fails|foolproof|works_for_everyone|works_for_everybody|works_every_time|sure-fire|surefire|put_it_in_the_diary|put_it_in_writing|mark_my_words|take_it_to_the_bank|hundred_percent_success|100%_success|money-back|zero_doubt|never_been_wrong", as: "flat", without: "breath|rest|timer|don't|nothing", family: "general", example: "You will be leaner by May, bank on it." },
    { find: "<number> days|weeks|sessions|months ~,3 you'll|you_will|you're_going_to|and_your ~5 <outcome>|fit_into|weigh", without: "might|may|could|probably|hope|perhaps|maybe|if_you|around|roughly|some", family: "general", example: "Three weeks and you'll have abs." },
    { find: "<reduce>|gain|add|put_on|get <number> ~1 kilo%|kg|pound%|lbs|stone|inch|inches|dress_size%|size%|centimetres ~3 in ~1 <number> day%|week%|month%|session%", as: "flat", without: "might|may|could|don't|not|never|can't|nobody|if|up_to", family: "general", example: "You will lose ten pounds in three weeks." },
    { find: "without_fail|without_a_doubt|without_question|for_certain|for_sure ~,6 you'll|you_will ~4", as: "flat", with: "<outcome>|flat|lean|waist|stomach|jeans", without: "might|could|not|never|sweat|feel", family: "general", example: "Without a doubt you'll be leaner by May." },
    { find: "<number> days|weeks|sessions|months ~3 you'll|you_will ~1 do|doing|be_doing <number>", as: "flat", without: "might|may|could|probably|hope|perhaps|maybe|if|sets|reps", family: "general", example: "Ten days and you'll be doing twenty." },
    { find: "everyone|everybody|anybody|anyone who ~4 loses|gains|drops|sees|gets|looks ~5 every|always|time|without_fail|result%|weight|inches", as: "flat", without: "not|don't|never|may|might|asks", family: "general", example: "Everyone who tries this loses weight." },
    { find: "you_will|you'll definitely|certainly|absolutely|100%|surely|without_doubt ~6 <outcome>|get|gain|look", family: "general", example: "You'll definitely lose two dress sizes." },
    { find: "<sure> &.14 <change>", only: ["general", "squat", "hinge", "core", "arm-isolation", "vertical-pull", "row", "horizontal-press", "overhead-press", "bridge-thrust", "cooldown-stretch", "kettlebell-swing", "lunge-step", "leg-machine", "plyometric", "mobility-warmup", "cable", "back-extension"], as: "flat", without: "can't_guarantee|cannot_guarantee|no_guarantee%|not_guarantee*|don't_guarantee|never_guarantee|won't_promise|can't_promise|cannot_promise|don't_promise|no_promises|not_promising|never_promise|nobody_can|no_one_can|might|may|could|frame|sore|sweat|last_set|depends|different|promise_yourself|laughed|hope|breath|safe|fixed_bar|machine|chair|rest_period|period_of|not_certain|isn't_certain|nothing_is|the_timer|easy|if_anyone|check|vary|every_rep|bar_path", family: "general", example: "Ten kilos on your squat, that's settled." },
    { find: "you'll|you_will|you're|you_are|your|yours|we'll_have_you|has_you|have_you &12 <bydate>", without: "might|may|could|hope|hoping|aim|goal|plan|if_you|let's|see_if|try|perhaps|maybe|should|don't|not|want|would_like|by_the_end_of_the_set|by_the_end_of_the_session|by_the_time|by_week_two_you_might|by_day_two|tired|by_the_end_of_this|session|sore|sweat|cheering", with: "<change>|lighter|leaner|kilo%|stone|doing|strong*|fit|pull-up|guaranteed|certain|lose", family: "general", example: "You'll be in your old jeans by June." },
    { find: "<number>|a ~1 days|weeks|week|month|months|sessions|minutes_a_day &9 you'll|you_will|you're|and_your|your ~6 <change>", as: "flat", without: "might|may|could|probably|hope|perhaps|maybe|if_you|around|roughly|some|aim|goal|try|don't|not|never|should|after_birth|months_pregnant|rest|for_two_weeks|keep_a|last|ago|off|a_week|leave", with: "you'll|you_will|you're|lose|certain|guaranteed", family: "general", example: "Six weeks and you're visibly leaner." },
    { find: "everyone|everybody|every_person|every_client|every_student|all_my_clients|all_my_students|nobody_has_ever|no_one_has_ever|hundred_percent_of|100%_of|whoever_you_are|works_for_everyone|works_for_everybody|it_works_for &.14 works|failed|fails|loses|lose|gets_abs|gains|drops|sees|fits|is_in_the_splits|does_a_chin-up|succeeds|slimmer|leaner", as: "flat", without: "might|may|could|hope|if|not_for|doesn't|different|vary|ready|bar_down|breath|asks", family: "general", example: "It works for everyone who walks in." },
    { find: "i_can't|i_cannot|can't|nobody_can|never|i_won't|i_don't|results_vary|results_may|not ~2 promise|promises|a_thing|vary|guarantee ~.6 but|except|anyway|that_said|bar_this|this_is|yours ~9 <change>|will", as: "flat", without: "may_help|might|could|hope|can_promise_the|we_can|plain|steady|fair", family: "general", example: "I never make promises, but you will lose a stone." },
    { find: "works|worked|will_work|delivers ~2 for ~1 every|everyone|everybody|anybody|all ~3", as: "flat", without: "may|might|not|doesn't|don't|never|nothing|no_exercise|schedule|different|same", family: "general", example: "This works for every single person." },
  ],
  silent: [
    { text: "We can't guarantee what your body will do.", family: "general" },
    { text: "No promises, just practice.", family: "general" },
    { text: "You'll get stronger if you keep coming.", family: "general" },
    { text: "Results vary with food, sleep and where you start.", family: "general" },
    { text: "I promise this is the last set.", family: "general" },
    { text: "Six weeks of practice may bring a chin-up; it may take longer.", family: "vertical-pull" },
    { text: "I promise you will hear the timer.", family: "general" },
  ],
};
