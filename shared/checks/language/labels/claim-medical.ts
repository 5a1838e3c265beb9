import type { LabelReader } from "../types";

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
  ],
  silent: [
    { text: "Some people find this comfortable for a stiff back.", family: "mobility-warmup" },
    { text: "Ask your doctor first if you have arthritis.", family: "general" },
    { text: "This video treats nothing and replaces nobody.", family: "general" },
    { text: "This does not cure back pain.", family: "general" },
    { text: "If you have high blood pressure, talk to your doctor before you start.", family: "general" },
  ],
};
