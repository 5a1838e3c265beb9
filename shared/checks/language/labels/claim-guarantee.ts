import type { LabelReader } from "../types";

/** Certainty about a result. */
export const claimGuarantee: LabelReader = {
  label: "claim-guarantee",
  ruling: "A result is stated as certain; results vary.",
  patterns: [
    { find: "guarantee+|guaranteed", without: "can't_guarantee|not_guaranteed|no_guarantee%|never_guarantee|cannot_guarantee|don't_guarantee|isn't_guaranteed|not_a_guarantee|without_guarantee%|aren't_guaranteed|money_back|sore|feel|sweat|shake|laugh|swear|tired|hate|wobble", family: "general", example: "I guarantee visible results." },
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
  ],
  silent: [
    { text: "We can't guarantee what your body will do.", family: "general" },
    { text: "No promises, just practice.", family: "general" },
    { text: "You'll get stronger if you keep coming.", family: "general" },
    { text: "Results vary with food, sleep and where you start.", family: "general" },
    { text: "I promise this is the last set.", family: "general" },
  ],
};
