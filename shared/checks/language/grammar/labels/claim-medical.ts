import type { LabelReader } from "../../types";

/** An exercise or product is said to cure, treat or prevent a condition, or to stand in for medicine. */
export const claimMedical: LabelReader = {
  label: "claim-medical",
  ruling: "An exercise or product is said to cure, treat or prevent a condition, or to stand in for a professional.",
  patterns: [
    { find: "<cure> ~4 <condition>", without: "stop_when|stop_if|stop_before|may_help|might|ask_your|see_a|treats_nothing|prevent_slipping", family: "general", example: "This move cures back pain." },
    { find: "cure+|remedy for ~3 <condition>|everything|pain", family: "general", example: "The natural cure for arthritis." },
    { find: "<condition> ~,6 gone|vanish|vanishes|disappear|disappears|cured|healed|history|a_thing_of_the_past|goes_away|go_away", without: "if|until|once|when", family: "mobility-warmup", example: "Two minutes a day and your sciatica is gone." },
    { find: "instead_of|replace+|no_need_for|stop_seeing|skip|cancel|ditch|bin|throw_away|throw_out|who_needs|better_than|don't_need|come_off|without|quit|no_more|get_rid_of|forget|burn ~3 <medic>", as: "flat", without: "don't_replace|not_replace|never_replace|doesn't_replace|not_a_replacement|don't_skip|can't_replace|with_your_doctor|ask_your|without_asking|check_with|cannot_replace|won't_replace|don't_come|don't_stop|never_skip|never_stop", family: "general", example: "Do this and you can stop seeing your doctor." },
    { find: "stop|quit|give_up|finish taking ~4 <medic>", as: "flat", without: "don't|never|not|without_asking|ask_your", family: "general", example: "Stop taking your tablets once this works." },
    { find: "your|the doctor%|physio%|gp|surgeon is|are|was|'s wrong|lying|clueless|behind", as: "flat", family: "general", example: "Your doctor is wrong about this." },
    { find: "doctor's|doctors wrong|hate_this|don't_want_you", as: "flat", family: "general", example: "Doctors hate this stretch." },
    { find: "realign+|reset|resets|correct+ ~2 spine|vertebra*|pelvis|discs|hips|joints", without: "your_grip|your_feet|yourself|if_your|stop", only: ["general", "mobility-warmup", "cooldown-stretch", "back-extension", "core", "row"], family: "mobility-warmup", example: "This realigns your spine." },
    { find: "detox*|flush+|purge+|cleanse+ ~4 toxins|body|liver|organs|system|blood|kidneys|lymph*", family: "general", example: "Twists flush the toxins out of your liver." },
    { find: "boost|boosts|fix|fixes|heal|heals ~2 immune_system|hormones|metabolism_for_good|gut|thyroid", without: "may", family: "general", example: "This heals your hormones." },
    { find: "<cure>|knock+_out|wipe+_out|clear+_up|sort+_out|see+_off|got_rid_of|remove+|straighten+_out|straighten+|closed|close+|ended|chase+_away|flatten+|settle+|shift+|wash+_away|works_better_than|fixes|rid_of ~3 <condition>|rotator_cuff|stenosis|runner's_knee|diastasis|prolapse|bad_back|bad_knee%|pelvic_girdle|hypertension|torn_* ~1", without: "stop_when|stop_if|stop_before|may_help|might|ask_your|see_a|treats_nothing|doesn't|does_not|won't|can't|not|never|no_exercise|nobody|cleared|don't|if_you_have|if_your|without|close_to|nothing_here", family: "cooldown-stretch", example: "This stretch knocks out plantar fasciitis." },
    { find: "<condition>|rotator_cuff|stenosis|runner's_knee|scoliosis|diabetes|bad_back|bad_knee% ~.9 gone|vanish*|disappear*|cured|healed|history|a_thing_of_the_past|goes_away|slides_home|packed_its_bags|in_the_rear-view|no_more|for_good|fixed|clears", without: "if|until|once|when|not|doesn't|don't|isn't|never|nobody|ask", family: "general", example: "Four of these a day and the migraine is gone." },
    { find: "cancel|skip|forget|bin|chuck|ditch|throw|stop|drop|don't_need|won't_need|no_longer_need|no_need_for|save_the_money_on|leave|swap|never_mind|don't_bother|who_needs|instead_of|put_away|flush ~4 <medic>|pills|operation|appointment|statins|physio_appointment|foot_doctor|cast|crutches|injection%|surgery|specialist%|the_scan|hearing_aids|knee_brace", as: "flat", without: "don't_skip|never_skip|don't_stop|never_stop|don't_forget|without_asking|brace_your|brace_hard|no_need_to_brace|bracing|don't_cancel|don't_swap|not_replace|ask_your|ask_the|brace_the|to_brace|braced|the_brace|a_brace|brace_before|brace_and|talk_to|cleared", with: "this|these|my|instead|job|better|works|cures|heals|fixes|replaces|once|when|squats|stretch|does|do", family: "mobility-warmup", example: "Cancel the physio appointment, this does the job." },
    { find: "won't|don't|no_longer|never need ~2 <medic>|crutches|injections ~2 any_more|anymore|again|after_this|once|now", as: "flat", without: "brace_hard|if", family: "general", example: "You won't need your physio any more." },
  ],
  silent: [
    { text: "Some people find this comfortable for a stiff back.", family: "mobility-warmup" },
    { text: "Ask your doctor first if you have arthritis.", family: "general" },
    { text: "This video treats nothing and replaces nobody.", family: "general" },
    { text: "This does not cure back pain.", family: "general" },
    { text: "If you have high blood pressure, talk to your doctor before you start.", family: "general" },
    { text: "Take your tablets as your doctor told you.", family: "general" },
    { text: "This will not fix a torn muscle; see someone who can.", family: "mobility-warmup" },
  ],
};
