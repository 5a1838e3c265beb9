import type { LabelReader } from "../../types";

/** The sign is ruled out in the same text. */
const DENIED = "don't_hurt|doesn't_hurt|not_hurt|no_pain|without_pain|without_any_pain|painless|not_painful|isn't_sharp|isn't_painful|nothing_hurts";

/** Go on, go deeper or repeat through pain and other stop signs. */
export const painPush: LabelReader = {
  label: "pain-push",
  ruling: "A sharp, joint, nerve or dizzy sign is a reason to stop, and the text says to go on.",
  patterns: [
    { find: "<through> ~2 through ~3 <symptom>", family: "general", example: "Push through the pain." },
    { find: "ignore|ignoring|disregard|block_out|blank|shut_out|forget|never_mind|overlook|override ~5 <symptom>", as: "flat", without: `${DENIED}|don't_ignore|never_ignore|not_ignore|do_not_ignore`, family: "squat", example: "Ignore that pinch in your hip." },
    { find: "<symptom> ~4 ignore|keep_going|push_through|work_through|train_through", without: "don't|never|not|stop", family: "overhead-press", example: "Shoulder pain is part of it, ignore it." },
    { find: "<symptom> ~,6 is|are|means|just|only|that's|it's ~3 weakness|normal|progress|part_of|growth|growing|warming|waking|settling|nothing|good|healing|working|nerves|gains|strength|character|temporary|in_your_head|dramatic|the_body|your_body|free|length|feedback|a_sign_it's|a_good_sign|loosening|opening|proof|stretching|lying", as: "flat", without: `${DENIED}|not|never|stop|see_a|isn't|doesn't|aren't|no_pain|different`, family: "squat", example: "A sharp pain in the knee is just weakness leaving." },
    { find: "<symptom> ~.8 <carryon>", as: "flat", without: `${DENIED}|stop|leave|rest|shorten|swap|lighter|ease|sit|see|don't_push|never|not|no|unless|before|isn't|without|burn`, family: "overhead-press", example: "A pinch in the shoulder? Press harder." },
    { find: "don't|dont|never|not let ~3 <symptom> ~2 stop|slow|beat|scare|hold|put", as: "flat", without: DENIED, family: "general", example: "Never let a sore knee slow you down." },
    { find: "no_pain ~,1 no_gain", as: "flat", family: "general", example: "No pain, no gain." },
    { find: "pain is weakness", family: "general", example: "Pain is weakness leaving the body." },
    { find: "until|till it|you|they|something hurt|hurts|stabs|pinches|stings|burns_in_the_joint|goes_numb", without: "stop|before|not|don't|never", family: "cooldown-stretch", example: "Pull until it hurts, then hold." },
    { find: "into|past|beyond <your>? <symptom>", without: "not|never|don't|without|before", only: ["cooldown-stretch", "mobility-warmup", "squat", "lunge-step", "core", "general", "overhead-press", "cable"], family: "cooldown-stretch", example: "Lean right into the pain." },
    { find: "<carryon> ~,8 <symptom>", without: `${DENIED}|unless|before|if_it_hurts`, family: "hinge", example: "Keep going even with a stabbing in your back." },
    { find: "if|when|though|once|feel|feels|feeling ~6 <symptom> ~,10 <carryon>", as: "flat", without: `${DENIED}|don't_carry_on|don't_push|don't_keep|never`, family: "squat", example: "If your knee hurts, push deeper and it will settle." },
    { find: "don't|dont|never|no|do_not stop|stopping|quit|rest|quitting|pause ~6 <symptom>", as: "flat", without: DENIED, family: "core", example: "Don't stop because your hip pinches." },
    { find: "a_pop|popped|a_ping|a_snap|a_crack|a_crunch|a_clunk|that_pop|that_click ~.10 <carryon>", without: `${DENIED}|stop|see_a|applause`, as: "flat", family: "hinge", example: "If you hear a pop, carry on." },
    { find: "see|seeing stars|spots", without: "way_to|stop|sit|if", as: "fault", family: "bridge-thrust", example: "Press until you see stars." },
    { find: "dizzy|dizziness|light-headed|faint|numb|tingling ~,6 normal|good|fine|great|carry_on|keep_going|expected|means_it's_working|part_of", without: "not_normal|stop|sit|isn't", family: "general", example: "Feeling dizzy is normal, keep going." },
    { find: "no_need|don't|never|no_reason|needn't|you_don't|won't|not ~4 stop|stopping|quit|quitting|rest|pause|cut|cutting|shorten|lower|lowering|sit|slow|bail|rack|panic|fuss|worry|back_off|ease|end|swap ~6 for|because|over|when|if|at|about|just ~5 <symptom>", as: "flat", without: "stop_if|chase|don't_push|burning", family: "overhead-press", example: "No need to stop for a pinch in the shoulder." },
    { find: "ignore|forget|never_mind|shrug_off|push_past|don't_mind|disregard|fight_through|bite_down_on|grit_your_teeth|brush_off|laugh_off ~4 <symptom>", without: "don't_ignore|never_ignore|not_ignore|don't_push|soreness|muscle_burn", family: "row", example: "Shrug off the twinge and finish." },
    { find: "<symptom> &5 is|means|it's|that's|proves|proof|tells|just|only|are|just_it ~5 <goodsign>", without: "if|stop|not_normal|isn't|doesn't|rest|muscle_burn|easing|slow|ask|see_a|means_stop|don't", family: "general", example: "That tingling is only the nerves waking up." },
    { find: "until|till ~3 hurt+|scream+|stabs|stab|painful|agony|pain|sting+ &.9 <carryon>|further|then_go|stay|breathe|hold|more|deeper|another", without: "not|never|don't|stop", family: "cooldown-stretch", example: "Stretch until it really hurts, then go further." },
    { find: "<symptom> ~.9 <carryon>|another_set|keep+_going|sets_left|go_again|finish/v|press_right_through|right_through|push_on|crack_on", without: "stop|stops|ease|don't|no|easing|see_a|doctor|if_not|swap|rest|burn|lighter|less|only_if|without|gone|until_it|pain-free|painless|nothing|never|clears", family: "hinge", example: "Felt a pop? Shake it off and grab the bar." },
    { find: "<number>|do|another ~2 more ~3 <symptom>", without: "no_more|don't|than", family: "leg-machine", example: "Do more of these until the pain stops." },
    { find: "pain|ache|twinge|soreness|pinch|stab|burning ~.3 run|walk|shake|swing|stretch|work|sweat|lift|row ~1 it|that ~1 off|out|through|away", as: "flat", without: "muscle|don't|stop|never|not|gently|ease", family: "plyometric", example: "Shin pain? Run it off." },
  ],
  silent: [
    { text: "If the clicking doesn't hurt, carry on.", family: "squat" },
    { text: "If it hurts, stop.", family: "general" },
    { text: "Push through the burn, not through pain.", family: "squat" },
    { text: "Sharp pain means the set is over.", family: "squat" },
    { text: "Stretch until you feel a mild pull, never into pain.", family: "cooldown-stretch" },
    { text: "Your thighs will burn and shake; that is normal.", family: "squat" },
    { text: "If anything feels sharp or tingly, leave the move out.", family: "general" },
    { text: "Never push through joint pain.", family: "general" },
    { text: "This will hurt a bit tomorrow.", family: "general" },
    { text: "If your knee hurts, stop and tell me.", family: "squat" },
    { text: "A burning thigh is only effort; a sharp knee means stop.", family: "squat" },
    { text: "No pain, please: shorten the range until it is quiet.", family: "mobility-warmup" },
  ],
};
