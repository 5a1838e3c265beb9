/** Phrases that decide how the words around them are meant. Each entry is a piece of a regular expression over normalised text. */
const phrases = (list: readonly string[], all = false): RegExp => new RegExp(`\\b(?:${list.join("|")})\\b`, all ? "g" : "");

/** The same, but only within a breath after the words in question and inside their sentence. */
const nearby = (list: readonly string[]): RegExp => new RegExp(`^[^.!?]{0,40}?\\b(?:${list.join("|")})\\b`);

/** Waves something through: "don't worry if", "it's fine when", "even if". Turns a fault into advice and puts a safe habit down. */
export const PERMIT = phrases([

  "(?:don'?t|do not|never|wouldn'?t|not going to|no need to) (?:you )?(?:even )?(?:worry|fret|stress|fuss|care|mind|panic|be (?:afraid|shy|scared|precious)|overthink|let anyone)",
  "never mind", "nothing wrong with", "no (?:problem|harm|big deal|issue|drama|worries)",
  "(?:it'?s|its|that'?s|is|are|perfectly|totally|absolutely|quite) (?:just |all |perfectly |totally |absolutely |quite )?(?:fine|ok|okay|alright|all right|normal|allowed|no problem|good)(?: if| when| to| for| that)",
  "doesn'?t matter", "don'?t matter", "who cares", "(?:nobody|no one) cares", "i don'?t (?:care|mind)",
  "(?:can|may|could) (?:happily|safely|absolutely)", "even if", "even when", "even though", "so what if", "feel free to", "go ahead and",
  "(?:don'?t|do not|never|don'?t you dare)(?: you)?(?: dare)? (?:stop|quit|pause|rest|give up|back off|slow down|ease off|put it down)",
]);

/** Drops what follows: fatal to a safe habit, but as good as a prohibition in front of a fault. */
export const DROP = phrases([
  "no need (?:to|for|of)", "needn'?t", "(?:don'?t|do not|doesn'?t|never) need(?: to)?", "don'?t have to",
  "(?:don'?t|do not|never|wouldn'?t|not going to) (?:you )?(?:even )?(?:bother|waste (?:time|energy)|wait for)",
  "(?:stop|quit) (?:fussing|worrying|obsessing|fretting|bothering|stressing|caring)", "(?<!don'?t |never |not )forget(?: all| about|ting)?",
  "(?:nobody|no one) needs", "skip",
]);

/** Said behind a fault to wave it through, or behind a habit to put it down. */
export const DISMISS_AFTER = nearby([

  "(?:is|are|isn'?t|that'?s|it'?s|'s)\\s*(?:just |perfectly |totally |absolutely |quite |completely |all )*(?:fine|ok|okay|alright|all right|normal|no problem|no big deal|nothing to worry about|good|great|allowed|a myth|overrated|optional|nonsense|for (?:beginners|wimps|babies|cowards|amateurs|other people)|a waste of time)",
  "doesn'?t matter", "don'?t matter", "never hurt (?:anyone|anybody)", "never killed",
  "is (?:how|what) (?:strong|real|serious|the pros|champions|my)", "as much as (?:you|they) (?:like|want)", "who cares", "no problem",
]);

/** Said behind a safe habit: it is for others, or not worth the trouble. */
export const PUT_DOWN_AFTER = nearby([

  "(?:is|are|'s) (?:just |only )?(?:a myth|overrated|optional|nonsense|a waste of time|for (?:beginners|wimps|babies|cowards|amateurs|other people))",
  "doesn'?t matter", "don'?t matter", "who cares",
]);

/** Governs what follows it in the same clause. */
export const NEGATOR = phrases([
  "don'?t", "dont", "do not", "does not", "doesn'?t", "never", "not", "no", "nor", "neither", "without", "avoid(?:ing|s)?", "instead of",
  "rather than", "isn'?t", "aren'?t", "wasn'?t", "can'?t", "cannot", "won'?t", "will not", "wouldn'?t", "shouldn'?t", "mustn'?t", "couldn'?t",
  "ain'?t", "stop", "quit", "skip", "forget", "resist", "prevent(?:s|ing)?", "refuse", "beware", "nobody", "no one", "none", "nothing", "before",
  "less", "hardly", "careful", "watch (?:out|for)", "against", "free of", "far from", "keep(?:s|ing)? \\w+ from", "nowhere",
], true);

/** Opens a condition; what follows is usually a stop rule. */
export const CONDITION = phrases([
  "if", "the (?:day|minute|rep|set) (?:that )?(?:your|the|you)", "when", "whenever", "once", "as soon as", "the moment", "the second", "anyone",
  "anybody", "any time", "anytime",
]);

/** Praises what was just described. */
export const PRAISE = phrases([
  "is how (?:you|we|champions|strong people)\\b(?! (?:(?:get|got|end up|wind up) )?(?:hurt|injured|a bad))",
  "gives you (?:more|a bigger|extra|that)", "so do it", "(?:is|that'?s) the (?:trick|secret|key|idea|goal|point|whole point)",
  "makes it (?:easier|quicker|faster)", "gets you (?:more|lower|deeper|there)", "go for it",
]);

/** What a permission or an order to carry on sounds like after a condition. */
export const CARRY_ON = phrases([

  "(?:keep|carry|push|press|grind|power|crack|soldier|drive|plough|plow|muscle|mush) (?:going|on|through|pushing|moving|pressing|lifting|swinging|jumping|pulling|at it)",
  "(?:that'?s|it'?s|you'?re) (?:fine|ok|okay|normal|good|great|a good sign|working|doing it right|growing|progress)",
  "don'?t (?:stop|worry|quit|panic|fuss)", "ignore", "no (?:problem|worries|matter)", "so be it", "let it", "whatever",
  "go (?:again|deeper|harder|on|for it)", "one more", "dig", "finish the set", "never mind", "all the better", "even better", "who cares", "embrace",
]);

/** Told as somebody's habit or past, not asked of the viewer. */
export const REPORT = phrases([
  "used to", "i once", "years ago", "back in the day", "my (?:first|old|former) (?:coach|trainer|teacher|boss)",
  "(?:some|most|many|other|those|certain|plenty of) (?:people|folks|coaches|apps|videos|trainers|programmes|programs|lifters)",
  "people (?:say|think|who|tell|love)", "they (?:say|tell|told)", "(?:you )?(?:might|may|will|'ll) (?:have )?(?:see|seen|hear|heard)",
  "the person who", "whoever (?:told|says|said)", "anyone who (?:tells|says|told)",
  "if (?:someone|somebody|anyone|anybody|a coach) (?:says|tells|shouts|promises)", "when (?:someone|somebody|people) (?:say|tell)s?",
  "old (?:advice|myth|rule)", "the myth", "a myth", "common (?:mistake|fault|error)",
  "the (?:classic|usual|big|number one|most common) (?:mistake|fault|error)", "i(?:'ve| have) (?:seen|heard)",
]);

/** Takes such a report up after all. */
export const ENDORSED = phrases([
  "(?:he|she|they) (?:was|were|is|are) right", "and it works", "so (?:do|copy|try) (?:it|that|this|them)", "do the same",
  "copy (?:me|that|them|him|her)", "works (?:a treat|wonders)",
]);

/** Said after a match, in the same sentence, to take it back, or to draw the right conclusion. */
export const TAKEN_BACK = phrases([
  "unlearn\\w*", "don'?t copy", "not copying", "what (?:not to do|we'?re not doing|we don'?t)",
  "exactly what (?:we|you|i)(?:'re| are)? (?:not|don'?t|avoid)\\w*",
  "that'?s (?:wrong|the mistake|a mistake|the fault|a fault|not (?:it|what|how|for us|the))", "don'?t do (?:that|it)", "please don'?t",
  "not any ?more", "no longer", "(?:that|this|it) is (?:wrong|nonsense|rubbish)", "nonsense", "nope", "no thanks",
  "not (?:today|here|us|in this|on my)", "we don'?t", "isn'?t (?:allowed|the|a|what|how|going|our|something)",
  "aren'?t (?:allowed|the|what|how|going)", "is(?: a| the)? (?:mistake|fault|problem|warning|sign|reason|cue|signal) ",
  "(?:are|is) (?:a )?(?:warning|signs?|problems?|mistakes?|cheating|banned|out|off the menu|how (?:people|i|backs|shoulders|knees|you) (?:all )?(?:get|got|end|ended|hurt|broke|lost|lose|wreck|ruin|tear|tore|injure|blow|blew)\\w*|why|what we avoid|the opposite|too)",
  "(?:can|will|could|might) (?:hurt|injure|strain|tear|damage|break)", "gets? people hurt",
  "means? (?:stop|too|the (?:weight|load|bar)|it'?s too|you(?:'ve| have)|less|put)", "tells? (?:you|us|me) (?:to|the|it)", "asks? (?:you )?for",
  "is asking", "are asking", "so (?:stop|go lighter|take|let'?s)", "drop the (?:weight|load)", "go lighter",
  "too (?:heavy|deep|far|much|fast|greedy)", "(?:reset|regress|shorten|swap|see a|talk to|ask a|leave (?:it|that|this) out)",
]);
