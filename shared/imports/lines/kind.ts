import { readCue } from "../../checks";
import type { LineKind } from "../../episode";

/** The kind of a spoken sentence, from its grammar first and the language reader where grammar leaves it open. */

/** What a sentence begins with that is no part of it. */
const LEAD = new RegExp(String.raw`^(?:${[
  String.raw`(?:um|uh|er|okay|ok|alright|all right|right|so|now|and|but|then|also|again|well|yeah|just|please|guys|everyone|folks|remember to|remember|make sure (?:that )?you|make sure to|make sure|be sure to|you want to|you wanna|you're going to|you're gonna|you need to|you have to|you've got to|you gotta|we want to|we're going to|we're gonna|i want you to|i'd like you to|i need you to|try to|try and|think about|think of|let's|go ahead and|what you want to do is|the key is to|the main thing is to|the trick is to|nice|good|great|cool|perfect|lovely|first up|next up|first|next|from there|from here|once you're (?:there|set|up)|at the (?:top|bottom)|as you (?:go|come|push|pull|lift|lower|stand|press|drive|row|swing)(?: \w+){0,3}|on the way (?:up|down)|every (?:rep|time|single rep)|for me|really|actually|and then)(?: |$)`,
].join("|")})+`);

const COMMANDS = new Set(
  ("keep drive push pull squeeze brace breathe sit stand lie press hinge lower lift raise lead tuck lean reach point turn rotate slide hold pause stay stop start set grab take pick put place plant step walk bend straighten lock unlock relax drop let bring send shift screw spread grip hug pack pin roll drag imagine pretend picture feel control "
  + "exhale inhale tense tighten engage stack look gaze open close kneel swing snap hike finish return touch tap aim use find move come go get give make slow draw scoop flare crush float fold extend flex curl row jump land catch absorb rest shake switch swap change climb crawl cross position set-up line dig crack zip chin chest elbows shoulders eyes hips knees ribs head neck heels feet toes back hands arms").split(" "),
);
const BODY = new RegExp(String.raw`\b(?:${[
  String.raw`chest|elbows?|shoulders?|shoulder blades?|eyes|hips?|knees?|ribs?|head|neck|heels?|feet|foot|toes?|back|spine|hands?`,
  String.raw`arms?|wrists?|core|trunk|glutes?|belly|chin|legs?|ankles?|thighs?|palms?|weight|bar|bell|dumbbells?|kettlebells?|handle`,
  String.raw`pad|floor|rep|breath`,
].join("|")})\b`);

const CAUTION = new RegExp(String.raw`\b(?:${[
  String.raw`if (?:it|that|this|anything|something|you feel|you have|you've got|you get|your \w+(?: \w+)? (?:hurts?|aches?|pinch\w*|click\w*|bothers?|complains?|is (?:sore|injured|bad|dodgy)|are (?:sore|bad)))(?:[\w' ]{0,30})(?:hurt\w*|pain\w*|pinch\w*|dizzy|sharp|sore|ache\w*|injur\w*|tweak\w*|numb\w*|tingl\w*|light-?headed|faint|problem\w*|issue\w*|click\w*|bothers?)`,
  String.raw`(?:any|sharp|sudden|feel(?:ing)?|get|got|have|with|some) (?:\w+ )?(?:pain|pinching|dizziness|numbness|tingling)`,
  String.raw`if (?:your|the) [\w' ]{0,20}(?:hurts?|aches?|pinch\w*|bothers?|complains?|sore|dodgy|plays? up|plays? you up|not happy|injured)`,
  String.raw`(?:your|a|the|see|ask|talk to|check with|speak to) (?:doctor|physio\w*|physician|gp|midwife|medical|health professional)`,
  String.raw`pregnan\w+|high blood pressure|safety (?:arms?|pins?|bars?)|spotter|(?:collars?|clips?) on|be careful`,
  String.raw`careful (?:with|here|of)|hurts? (?:stop|you)|stop (?:straight away|right away|immediately|the set if|if)`,
  String.raw`injur(?:y|ies|ed) (?:\w+ ){0,3}(?:stop|skip|leave)`,
].join("|")})\b`);
const AVOID_LEAD = new RegExp(String.raw`^(?:${[
  String.raw`don't|do not|never|avoid|no (?!problem|worries|idea|need|doubt|rest|one|matter|rush|excuses)\w+`,
  String.raw`not (?!a problem|bad|today|too bad)\w+|stop \w+ing|try not to|resist|watch (?:out for|that you don't)|be careful not to`,
  String.raw`make sure (?:you don't|you're not|that you don't|it doesn't|they don't|your \w+ (?:don't|doesn't|aren't|isn't))`,
  String.raw`you don't want|we don't want|i don't want|you're not|we're not|don't let`,
  String.raw`(?:your|the) \w+ (?:don't|doesn't|aren't|isn't|shouldn't)|what (?:you|we|i) don't want|what i don't want|without \w+ing`,
  String.raw`rather than`,
].join("|")})\b`);
const AVOID_IN = new RegExp(String.raw`\b(?:${[
  String.raw`common (?:mistake|error|fault)|biggest (?:mistake|error)|(?:mistake|fault) (?:i|that|is|here|people)`,
  String.raw`(?:people|everyone|beginners|lots of you|some of you|most people) (?:\w+ )?(?:tend|tends|love|always|often|will|let|round|arch|swing|lean|cheat|rush|bounce|shrug|flare|drop|end up|start)`,
  String.raw`i see (?:people|a lot|so many|this|lots|folks|everyone)|you(?:'ll| will)? (?:see|find) (?:people|a lot)|you don't want`,
  String.raw`we don't want|i don't want|shouldn't (?:be|feel|move|come|go|round|drop|swing|lift)|must not|not what we want`,
].join("|")})\b`);
const ABOUT_ME = new RegExp(String.raw`^(?:${[
  String.raw`i|i'm|i've|i'll|i'd|my|we|we're|we've|we'll|it's|it is|that's|this is|these are|there's|there are|here|today|welcome`,
  String.raw`hello|hi|hey|thanks|thank|see|last week|yesterday|when i|what i|he|she|they|they're|the reason|why|because`,
  String.raw`if you're new|honestly|funny|anyway`,
].join("|")})\b`);
const NOUN_FIRST = new RegExp(String.raw`^(?:${[
  String.raw`(?:your|the|both|those|soft|tall|long|big|proud|flat|straight|strong|tight|light|slight|slow|nice|chest|elbows?|shoulders?|eyes|hips?|knees?|ribs?|head|neck|heels?|feet|toes|back|hands|arms|chin|core|belly|spine|wrists?) `,
].join("|")})+(?:\w+ ){0,6}(?:up|down|in|out|back|forward|tall|tight|soft|flat|still|straight|together|apart|neutral|long|level|high|low|heavy|square|quiet|over|under|on|to|against|behind|towards?|stays?|stay|tucked|packed|relaxed|bent|squeezed)\b`);

const SAFETY = new Set(["spine-under-load", "joint-lockout", "breath-hold", "pain-push", "ballistic-or-bounce", "neck-position", "knee-tracking", "overextension", "failure-unsafe"]);

const PICTURED = /\bthink (?:about|of) (\w+)ing\b/;

/** The words after what only leads in; "think about pushing the floor away" asks to push it. */
function bareOf(plain: string): string {
  const bare = plain.replace(LEAD, "").trim();
  const stem = PICTURED.exec(plain)?.[1];
  if (stem === undefined || !bare.startsWith(`${stem}ing`)) return bare;
  const verb = [stem, `${stem}e`, stem.replace(/(.)\1$/, "$1")].find((form) => COMMANDS.has(form)) ?? `${stem}ing`;
  return verb + bare.slice(stem.length + 3);
}

/**
 * Which kind of line a spoken sentence is.
 * @param plain - lower case, no signs
 * @param family - the movement family of the block, or "general"
 * @param hasScheme - sets, loads or rests are said in it: such a sentence is said, whatever its verb
 */
export function lineKind(plain: string, family: string, exercise: string | null, hasScheme: boolean): Extract<LineKind, "cue" | "avoid" | "caution" | "say"> {
  const bare = bareOf(plain);
  const first = bare.split(" ")[0] ?? "";
  const words = bare.split(" ").length;
  if (CAUTION.test(plain)) return "caution";
  if (AVOID_LEAD.test(bare) && BODY.test(plain) && words >= 3) return "avoid";
  if (AVOID_IN.test(plain) && (BODY.test(plain) || isFault(bare, family, exercise))) return "avoid";
  if (hasScheme || words < 3) return "say";
  if ((COMMANDS.has(first) && !ABOUT_ME.test(bare) && words <= 40 && BODY.test(bare)) || (NOUN_FIRST.test(bare) && BODY.test(bare))) return "cue";
  // A fault told as something that happens: nothing is asked, and the reader would object if it were.
  if (!ABOUT_ME.test(bare) && words >= 4 && words <= 30 && BODY.test(bare) && /^(?:(?:the|your|people's|their) \w+|letting|arching|rounding|leaning|swinging|bouncing|dropping|shrugging|flaring|rushing|jerking|yanking|locking|holding)\b/.test(bare) && isFault(bare, family, exercise)) return "avoid";
  return "say";
}

function isFault(text: string, family: string, exercise: string | null): boolean {
  return readCue({ text, family, slot: "cue", audience: "general", exercise }).some(({ label }) => SAFETY.has(label));
}
