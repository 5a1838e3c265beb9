/**
 * What surrounds a match decides whether the text asks for it: prohibitions, warnings, stop rules, quotes, and
 * permissions that turn a negation round ("don't worry if ...").
 */

/** Waves something through: "don't worry if", "it's fine when", "even if". Turns a fault into advice and puts a safe habit down. */
const PERMIT =
  /\b(?:(?:don'?t|do not|never|wouldn'?t|not going to|no need to) (?:you )?(?:even )?(?:worry|fret|stress|fuss|care|mind|panic|be (?:afraid|shy|scared|precious)|overthink|let anyone)|never mind|nothing wrong with|no (?:problem|harm|big deal|issue|drama|worries)|(?:it'?s|its|that'?s|is|are|perfectly|totally|absolutely|quite) (?:just |all |perfectly |totally |absolutely |quite )?(?:fine|ok|okay|alright|all right|normal|allowed|no problem|good)(?: if| when| to| for| that)|doesn'?t matter|don'?t matter|who cares|(?:nobody|no one) cares|i don'?t (?:care|mind)|(?:can|may|could) (?:happily|safely|absolutely)|even if|even when|even though|so what if|feel free to|go ahead and|(?:don'?t|do not|never|don'?t you dare)(?: you)?(?: dare)? (?:stop|quit|pause|rest|give up|back off|slow down|ease off|put it down))\b/;

/** Drops what follows: fatal to a safe habit, but as good as a prohibition in front of a fault. */
const DROP =
  /\b(?:no need (?:to|for|of)|needn'?t|(?:don'?t|do not|doesn'?t|never) need(?: to)?|don'?t have to|(?:don'?t|do not|never|wouldn'?t|not going to) (?:you )?(?:even )?(?:bother|waste (?:time|energy)|wait for)|(?:stop|quit) (?:fussing|worrying|obsessing|fretting|bothering|stressing|caring)|(?<!don'?t |never |not )forget(?: all| about|ting)?|(?:nobody|no one) needs|skip)\b/;

const DISMISS_AFTER = /^[^.!?]{0,40}?\b(?:(?:is|are|isn'?t|that'?s|it'?s|'s)\s*(?:just |perfectly |totally |absolutely |quite |completely |all )*(?:fine|ok|okay|alright|all right|normal|no problem|no big deal|nothing to worry about|good|great|allowed|a myth|overrated|optional|nonsense|for (?:beginners|wimps|babies|cowards|amateurs|other people)|a waste of time)|doesn'?t matter|don'?t matter|never hurt (?:anyone|anybody)|never killed|is (?:how|what) (?:strong|real|serious|the pros|champions|my)|as much as (?:you|they) (?:like|want)|who cares|no problem)/;

/** Said behind a safe habit: it is for others, or not worth the trouble. */
const PUT_DOWN_AFTER =
  /^[^.!?]{0,40}?\b(?:(?:is|are|'s) (?:just |only )?(?:a myth|overrated|optional|nonsense|a waste of time|for (?:beginners|wimps|babies|cowards|amateurs|other people))|doesn'?t matter|don'?t matter|who cares)/;

const NEGATOR = /\b(?:don'?t|dont|do not|does not|doesn'?t|never|not|no|nor|neither|without|avoid(?:ing|s)?|instead of|rather than|isn'?t|aren'?t|wasn'?t|can'?t|cannot|won'?t|will not|wouldn'?t|shouldn'?t|mustn'?t|couldn'?t|ain'?t|stop|quit|skip|forget|resist|prevent(?:s|ing)?|refuse|beware|nobody|no one|none|nothing|before|less|hardly|careful|watch (?:out|for)|against|free of|far from|keep(?:s|ing)? \w+ from|nowhere)\b/g;

/** Opens a new thought: a negation before it no longer governs what follows. */
const TURN = /[,;:.!?]|\s-\s|\b(?:but|so|then|just|until|till|because|unless|instead(?! of))\b/g;

const CONDITION = /\b(?:if|the (?:day|minute|rep|set) (?:that )?(?:your|the|you)|when|whenever|once|as soon as|the moment|the second|anyone|anybody|any time|anytime)\b/;

/** What a permission or an order to carry on sounds like after a condition. */
const PRAISE =
  /\b(?:is how (?:you|we|champions|strong people)\b(?! (?:(?:get|got|end up|wind up) )?(?:hurt|injured|a bad))|gives you (?:more|a bigger|extra|that)|so do it|(?:is|that'?s) the (?:trick|secret|key|idea|goal|point|whole point)|makes it (?:easier|quicker|faster)|gets you (?:more|lower|deeper|there)|go for it)/;

const CARRY_ON =
  /\b(?:(?:keep|carry|push|press|grind|power|crack|soldier|drive|plough|plow|muscle|mush) (?:going|on|through|pushing|moving|pressing|lifting|swinging|jumping|pulling|at it)|(?:that'?s|it'?s|you'?re) (?:fine|ok|okay|normal|good|great|a good sign|working|doing it right|growing|progress)|don'?t (?:stop|worry|quit|panic|fuss)|ignore|no (?:problem|worries|matter)|so be it|let it|whatever|go (?:again|deeper|harder|on|for it)|one more|dig|finish the set|never mind|all the better|even better|who cares|embrace)\b/;

/** Told as somebody's habit or past, not asked of the viewer. */
const REPORT =
  /\b(?:used to|i once|years ago|back in the day|my (?:first|old|former) (?:coach|trainer|teacher|boss)|(?:some|most|many|other|those|certain|plenty of) (?:people|folks|coaches|apps|videos|trainers|programmes|programs|lifters)|people (?:say|think|who|tell|love)|they (?:say|tell|told)|(?:you )?(?:might|may|will|'ll) (?:have )?(?:see|seen|hear|heard)|the person who|whoever (?:told|says|said)|anyone who (?:tells|says|told)|if (?:someone|somebody|anyone|anybody|a coach) (?:says|tells|shouts|promises)|when (?:someone|somebody|people) (?:say|tell)s?|old (?:advice|myth|rule)|the myth|a myth|common (?:mistake|fault|error)|the (?:classic|usual|big|number one|most common) (?:mistake|fault|error)|i(?:'ve| have) (?:seen|heard))\b/;
const ENDORSED = /\b(?:(?:he|she|they) (?:was|were|is|are) right|and it works|so (?:do|copy|try) (?:it|that|this|them)|do the same|copy (?:me|that|them|him|her)|works (?:a treat|wonders))\b/;

/** Said after a match, in the same or the next sentence, to take it back. */
const TAKEN_BACK =
  /\b(?:unlearn\w*|don'?t copy|not copying|what (?:not to do|we'?re not doing|we don'?t)|exactly what (?:we|you|i)(?:'re| are)? (?:not|don'?t|avoid)\w*|that'?s (?:wrong|the mistake|a mistake|the fault|a fault|not (?:it|what|how|for us|the))|don'?t do (?:that|it)|please don'?t|not any ?more|no longer|(?:that|this|it) is (?:wrong|nonsense|rubbish)|nonsense|nope|no thanks|not (?:today|here|us|in this|on my)|we don'?t|isn'?t (?:allowed|the|a|what|how|going|our|something)|aren'?t (?:allowed|the|what|how|going)|is(?: a| the)? (?:mistake|fault|problem|warning|sign|reason|cue|signal) |(?:are|is) (?:a )?(?:warning|signs?|problems?|mistakes?|cheating|banned|out|off the menu|how (?:people|i|backs|shoulders|knees|you) (?:all )?(?:get|got|end|ended|hurt|broke|lost|lose|wreck|ruin|tear|tore|injure|blow|blew)\w*|why|what we avoid|the opposite|too)|(?:can|will|could|might) (?:hurt|injure|strain|tear|damage|break)|gets? people hurt|means? (?:stop|too|the (?:weight|load|bar)|it'?s too|you(?:'ve| have)|less|put)|tells? (?:you|us|me) (?:to|the|it)|asks? (?:you )?for|is asking|are asking|so (?:stop|go lighter|take|let'?s)|drop the (?:weight|load)|go lighter|too (?:heavy|deep|far|much|fast|greedy)|(?:reset|regress|shorten|swap|see a|talk to|ask a|leave (?:it|that|this) out))\b/;

const TAKES_BACK = /\b(?:(?:just|only|i'?m) (?:kidding|joking)|who am i kidding|scratch that)\b[^a-z0-9]*(?=(?:[a-z0-9']+[^a-z0-9']+){2})/;

/** What was said as a joke and taken back is blanked out, so that only where the text lands is read. Same length as before. */
export function landing(text: string): string {
  const found = TAKES_BACK.exec(text);
  if (!found) return text;
  const end = found.index + found[0].length;
  return " ".repeat(end) + text.slice(end);
}

export interface Surroundings {
  /** Normalised text. */
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

interface Sentence {
  readonly before: string;
  readonly after: string;
  /** From the last turn of thought to the match. */
  readonly clause: string;
  /** The rest of the text behind this sentence. */
  readonly later: string;
}

function sentenceAround({ text, start, end }: Surroundings): Sentence {
  const head = text.slice(0, start);
  const from = Math.max(...[". ", "! ", "? ", ".\"", "\n"].map((mark) => head.lastIndexOf(mark))) + 1;
  const tail = text.slice(end);
  const stop = /[.!?](?=\s|$|")/.exec(tail);
  const to = stop ? stop.index + 1 : tail.length;
  const before = head.slice(from);
  let turn = 0;
  for (const match of before.matchAll(TURN)) turn = match.index + match[0].length;
  return { before, after: tail.slice(0, to), clause: before.slice(turn), later: tail.slice(to) };
}

const negations = (words: string): number => [...words.matchAll(NEGATOR)].length;

/** Is the safe habit at this place put down, before or after? */
export function isDismissed(place: Surroundings): boolean {
  const { before, clause, after } = sentenceAround(place);
  if (REPORT.test(before)) return false;
  if (DROP.test(clause) || PERMIT.test(clause)) return true;
  return negations(clause) === 0 && PUT_DOWN_AFTER.test(after);
}

/** Does somebody say that what stands at this place is fine, or to carry on with it? */
export function isPermitted(place: Surroundings): boolean {
  const { before, clause, after } = sentenceAround(place);
  if (REPORT.test(before) || TAKEN_BACK.test(after)) return false;
  if (PERMIT.test(before.slice(-90)) || DISMISS_AFTER.test(after) || (negations(clause) === 0 && PRAISE.test(after))) return true;
  return CONDITION.test(before) && negations(clause) === 0 && CARRY_ON.test(after);
}

/** Does the text reject, forbid, quote or warn of what stands at this place? */
export function isSilenced(place: Surroundings, as: "fault" | "flat"): boolean {
  const { before, clause, after, later } = sentenceAround(place);
  const words = place.text.slice(place.start, place.end);
  if (REPORT.test(before) && !ENDORSED.test(after + later)) return true;
  if (/^\s*"?\?\s*(?:no|nope|never|not|don'?t|stop)\b/.test(after + later)) return true;
  if (TAKEN_BACK.test(after) && !DISMISS_AFTER.test(after)) return true;
  if (/^\s*(?:no|nope|don'?t|never|stop|please don'?t|that'?s (?:wrong|not|the mistake))\b/.test(later)) return true;
  if (/\b(?:don'?t|doesn'?t|never|not|won'?t) (?:do|believe in|buy|like|want|use|say|teach|preach)(?: the| that| any)?[ "']*$/.test(before)) return true;
  // A complete thought with its own negation, negated once more: "don't bench without a spotter".
  if (as === "flat") return /\b(?:don'?t|do not|never|nobody should|not|avoid)\b/.test(clause) && !PERMIT.test(clause);
  if (PERMIT.test(before.slice(-90)) || DISMISS_AFTER.test(after) || PERMIT.test(words)) return false;
  if (negations(clause) > 0 || negations(words) > 0) return true;
  return CONDITION.test(before) && !CARRY_ON.test(after);
}
