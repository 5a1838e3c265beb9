import type { LabelReader } from "../types";

/** Insults, mockery, disgust about body, effort, sex, age or an easier version. */
export const shame: LabelReader = {
  label: "shame",
  ruling: "People are insulted or mocked for their body, effort, age, sex or an easier version.",
  patterns: [
    { find: "<insult>", without: "i'm|i_was|my_own|no_such_thing|nobody_is|nothing|not|isn't|aren't|ain't|never|i_felt|i_am|spotless|feels_useless|fish|for_me", family: "general", example: "That was pathetic." },
    { find: "lazy lot|bunch|bones|people|so-and-so|sods|body|bum|excuse%|lazy|backside|slob%", without: "no|not", family: "general", example: "Move it, you lazy lot." },
    { find: "you're|you_are|are_you|being|too|stop_being|don't_be so? lazy|weak|soft|fat|old|slow|unfit|girly|scared", without: "if|not_too|never_too|if_you're|when|not|isn't|no_matter|for_you|today|worried|feeling", as: "flat", family: "general", example: "Are you lazy or what?" },
    { find: "that|this|is|that's|you're|like_that|you|an|so embarrassing|an_embarrassment|disgusting|shameful|laughable|pitiful|ridiculous", without: "not|nothing|isn't|i'm|i_was|i_felt|my|weather|music", family: "lunge-step", example: "Your squat is embarrassing." },
    { find: "you_should|you_must|you_ought_to be|feel embarrassed|ashamed|mortified", as: "flat", without: "never|not|don't|nobody", family: "general", example: "You should feel mortified after that." },
    { find: "ashamed of|to|for ~2 you|yourself|have_you|yourselves", without: "don't|nothing|not|never|no", family: "general", example: "You should be ashamed of yourself." },
    { find: "shame on you", family: "general", example: "Shame on you for resting." },
    { find: "like a girl|girls|little_girl|baby|granny|grandma|grandad|old_lady|old_woman|sissy|toddler_having", without: "strong|land|sneaking|no_shame|cradle|hold", family: "general", example: "You lift like a girl." },
    { find: "my|your|even_my|even_your|a ~1 gran|granny|grandma|nan|nana|grandmother|kid|sister|toddler|mum|dog ~3 lift|lifts|do|does|press|presses|faster|stronger|squat|squats|more|better|warm|warms|holds|hold|longer|planks|runs", without: "did_with|i_do|proud|example|with_her", family: "general", example: "My gran lifts more than that." },
    { find: "man_up|grow_a_pair|grow_up|stop_whining|stop_moaning|quit_whining|quit_moaning|suck_it_up|toughen_up_you|cry_about_it|go_home_to_mummy|cry_me_a", family: "general", example: "Man up and finish." },
    { find: "what's|what_is your excuse", family: "general", example: "What's your excuse?" },
    { find: "no_wonder|that's_why|that_is_why ~1 you|your ~3 look|fat|weigh|size|single|jeans|mirror|like_that", as: "flat", without: "we|look_up|look_ahead|look_down", family: "general", example: "No wonder you look like that." },
    { find: "for|is_for|are_for the? ~1 wimps|babies|cowards|sissies|quitters|losers|weaklings|girls|grannies|lazy|the_weak|fat_people|old_people|people_who_give_up|ladies", without: "not|isn't|aren't|nobody|exercise|classes", as: "flat", family: "horizontal-press", example: "Knee push-ups are for babies." },
    { find: "you_call that|this a|an", family: "squat", example: "You call that a squat?" },
    { find: "look_at ~4 belly|gut|flab|rolls|stomach|backside|arms|thighs|you ~,4 wobble|jiggle|disgust*|shake|sad|state|hang*", family: "general", example: "Look at that belly wobble." },
    { find: "two|three|double|four|extra ~1 chins", without: "tuck|nod|pull-ups", family: "general", example: "Two chins in the front row, pick it up." },
    { find: "are_you|is_he|is_she made of|out_of ~2", without: "steel|stone|iron|springs", family: "horizontal-press", example: "Are you made of jelly?" },
    { find: "too|so fat|heavy|old|weak|ugly|big to|for|that ~2", without: "bar|weight|bell|load|dumbbell%|if|not|never|plate%|never_too|feels|it's|band|this_is|nobody|one|stack|reach", with: "you|you're|your", as: "flat", family: "general", example: "You are too fat for that move." },
  ],
  silent: [
    { text: "No shame in taking the lighter bell.", family: "general" },
    { text: "Nothing pathetic about a wall push-up.", family: "horizontal-press" },
    { text: "I was useless at these for a year.", family: "general" },
    { text: "This one is going to be rude to your legs.", family: "squat" },
    { text: "If the bar feels too heavy for you, take less.", family: "squat" },
    { text: "You are never too old to start.", family: "general" },
  ],
};
