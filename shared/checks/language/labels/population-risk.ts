import type { LabelReader } from "../types";

const PREGNANT = "pregnan*|bump|baby|trimester|mums-to-be|moms-to-be|mum-to-be|expecting|due_any_day|due_date|weeks_along|postnatal|postpartum|stitches|c-section|caesarean|new_mums|new_moms|newborn|buns_in_the_oven|bun_in_the_oven|gave_birth|after_birth|midwife|prenatal|mamas";
const OLDER = "over-sixties|over-seventies|over_sixty|over_seventy|over-75s|over-70s|over-60s|over-65s|over_eighty|pensioner%|seniors|grandparents|nans|grandads|hip_replacement|new_hip|new_knee|brittle_bones|osteoporosis|eighty-year-olds|retired";
const CONDITION = "heart_condition|heart_trouble|heart_disease|high_blood_pressure|blood_pressure|pacemaker|angina|osteoporosis|diabetes|epilepsy|stroke|bypass|heart_attack|aneurysm|hernia|glaucoma|retinopathy|blood_thinners|heart_murmur|stent";
const TEEN = "teens|teenagers|under_sixteen|under-sixteens|year_nines|year_eights|year_tens|kids|schoolkids|fourteen-year-olds|fifteen-year-olds|juniors|thirteen-year-olds|lads_from_school|twelve-year-olds";

/** A particular hazard for the people addressed. Combinations with other labels are added in read.ts. */
export const populationRisk: LabelReader = {
  label: "population-risk",
  ruling: "This is a particular hazard for the people it addresses.",
  patterns: [
    { find: "bump_or_no_bump|pregnant_or_not|expecting_or_not|baby_or_no_baby|bad_heart_or_not|new_hip_or_not", as: "flat", family: "general", example: "Pregnant or not, everyone jumps." },
    { find: "flat? on|onto your|the back ~,12", audience: ["pregnant"], with: "press|hold|minutes|stay|bridge|bench|load|weight|until|long|crunch%|sit-up%|throughout", without: "not|don't|side|prop*|cushion%|incline|instead|avoid|turn|short", example: "Stay on your back for ten minutes and press." },
    { find: "sit-up%|sit_ups|crunch|crunches|double_leg_lowers|leg_raises|planks_to_failure|jump_squats|burpees|box_jump%|jump%|sprint%|skipping|star_jumps|<maximal>|rebound|trampoline", audience: ["pregnant"], without: "no|not|don't|avoid|skip|leave|instead|without|later|rather|never|until|swap|out_of", example: "Hundred sit-ups now the baby is here." },
    { find: "face-down|face_down|on_your_belly|on_your_tummy|on_your_front|on_your_stomach", audience: ["pregnant"], without: "no|not|don't|avoid|instead|hands|rest_your", example: "Lie face down and lift." },
    { find: "heater|sauna|hot_room|steam|sweat_it_out|sweating_this|sweating_it|layers_on|windows_shut|turn_up_the_heating|heating_up", audience: ["pregnant"], without: "no|not|don't|avoid|open_the_window|cool|fan", example: "Turn up the heating, we want a hot room today." },
    { find: "leak+|leaking|heaviness|bleeding|spotting|doming|bulge|bulging|contractions ~,8 normal|ignore|keep_going|carry_on|push|fine|part_of|nothing|everyone|worry|clench|just", as: "flat", audience: ["pregnant"], without: "stop|ask|tell|see_your|call|not_normal|isn't", example: "A bit of leaking is normal, keep going." },
    { find: "twist|twists|twisting|wrench ~3 hard|fast|deep|deeper|further|fully|forcefully|all_the_way", audience: ["pregnant"], without: "no|not|don't|avoid|open", example: "Twist hard to each side." },
    { find: "jump+|leap+|hop+|box_jump%|depth_jump%|high_box|burpees|sprint|bound+", audience: ["older"], with: "high|higher|highest|big|bigger|everyone|everybody|all_of_you|off_the|hard|harder|fast|faster|max*|burpees|sprint", without: "lower|shorter|leave|low|no|not|don't|avoid|instead|without|never|rather|small|step|swap|optional|out_of", example: "Everyone jumps off the box today." },
    { find: "let_go_of|no|without|skip|ditch|forget|don't_use|don't_hold|away_from|don't_touch ~3 chair|rail|wall|support|banister|handrail|sofa|counter", as: "flat", audience: ["older"], without: "if_you|when_you|unless|only|steady|near|within_reach|hover|slip|wheels|lean|armrest", example: "Let go of the rail and shut your eyes." },
    { find: "eyes closed|shut", audience: ["older"], with: "one_leg|balance|stand|step|rail|chair|hop|walk|tiptoe", without: "open|don't|seated|sitting|lying|hold_on|hand_on|holding", example: "One leg, eyes closed, no wall." },
    { find: "<maximal>|one-rep|heaviest_thing|biggest_thing|absolute_most|adult_weights|grown-up_weights|dad's_weights", audience: ["teen"], without: "no|not|don't|avoid|never|without|later|rather|instead|isn't|aren't|won't|compare|wait|don't_need", example: "Find your one-rep max today, everyone." },
    { find: "cut|drop|lose|make|sweat ~3 weight|kilo%|kg|pounds|weight_class", audience: ["teen"], without: "no|not|don't|avoid|never|if_your|lower|drop_the_weight|down|lighter", with: "match|weigh-in|class|team|season|prom|summer|meet|competition|sauna|bin", example: "Cut two kilos before the match." },
    { find: `${PREGNANT} ~,14 on_your_back|<maximal>|hold_your_breath|sit-ups|sweating|jump%|burpees|crunches|see_stars`, without: "no|not|don't|avoid|never|ask|instead|clear*", example: "Mums-to-be, hold your breath and go for your max." },
    { find: `${OLDER} ~,14 jump%|high_box|<maximal>|purple|sprint|leap|no_rail|burpees`, without: "no|not|don't|avoid|never|ask|instead|compare", example: "Over-seventies, up on the high box." },
    { find: `${TEEN} ~,14 <maximal>|biggest|cut_weight|adult`, without: "no|not|don't|avoid|never|ask|instead|compare|wait", example: "Year nines, today we find your max." },
    { find: `${CONDITION} ~2 or_not|or_no|is_no|no_excuse|no_problem|doesn't_matter|never_mind|is_fine`, as: "flat", example: "Heart condition or not, you do the full set." },
    { find: `never_mind|forget|ignore|despite|even_with|don't_worry_about|regardless_of ~3 ${CONDITION}`, as: "flat", without: "don't_ignore|never_ignore", example: "Ignore the high blood pressure and strain." },
    { find: "ignore|never_mind|forget|whatever|no_matter_what|don't_listen_to|don't_wait_for ~3 doctor|midwife|physio|surgeon|cardiologist|clearance|consultant ~2", as: "flat", without: "don't_ignore|never_ignore|not_ignore", example: "Never mind what your doctor said." },
    { find: "doctor|midwife|surgeon|cardiologist|clearance|consultant ~,6 do_it_anyway|anyway|overrated|can_wait|too_careful|over-cautious|overcautious|blah|doesn't_need_to_know|fusses|worries_too_much", as: "flat", example: "Ask your doctor, then do it anyway." },
  ],
  silent: [
    { text: "Ask whoever looks after your pregnancy before you start.", family: "general" },
    { text: "Hold the chair if you like.", family: "squat" },
    { text: "If you have a heart condition, ask your doctor first.", family: "general" },
    { text: "No jumping today; step instead.", family: "plyometric" },
  ],
};
