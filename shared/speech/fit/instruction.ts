import { NUMBER_VALUES } from "../numbers";

/** What a coach tells people to do. Faults (drop, bounce, round) are left out: they are named to be avoided. */
const VERBS = `add bend brace breathe bring check come count do draw drive exhale extend feel film find finish focus follow grab grip hinge hold imagine inhale
  keep kneel lengthen let lie lift look lower make move open pick place plant point press pull push put raise reach relax release repeat rest return roll row set
  shift sit slide spread squat squeeze stack stand start stay step swap take think tighten tuck turn use wait walk watch`.split(/\s+/).join("|");
/** What follows a verb, and seldom a noun that is spelled like one ("press the bar", not "press conference"). */
const AFTER_VERB = `${`a across against all along an and around as at back behind between both by down each every for forward forwards from her here him his in into it its
  left me my now off on onto our out over right slow still tall that the them there these this those through to toward towards under until up us while with your
  yourself`.split(/\s+/).join("|")}|${[...NUMBER_VALUES.keys()].join("|")}|\\p{L}+ly|\\d+`;

/** Matches where a verb to follow begins, as part of a pattern; takes the flags i and u. */
export const VERB_AHEAD = String.raw`(?=(?:${VERBS})(?:,|\s+(?:${AFTER_VERB})(?![\p{L}'])))`;

/** Somebody who does something: "you keep ...", "it's ...". */
const SUBJECT_FIRST = /^(?:I|you|we|they|he|she|it|let's)(?:'\p{L}+)?\s+\p{L}/iu;
const VERB_FIRST = new RegExp(`^${VERB_AHEAD}`, "iu");
/** Words that make what follows part of another clause, or ask for more to come. */
const OPENS_CLAUSE = /(?<![\p{L}'])(?:who|whom|whose|which|that|what|whatever|when|whenever|where|while|if|whether|once|since|until|although|though|as|than|how|why|before|after|because)(?![\p{L}'])/iu;
const WANTS_MORE = /(?<![\p{L}'])(?:am|is|are|was|were|be|been|\p{L}+'(?:s|re|m|ve|ll|d)|do|does|did|have|has|had|will|would|can|could|may|might|must|should|and|or|but|so|only|just|simply|mainly|mostly|partly|largely|precisely|exactly|probably|perhaps|maybe|even|especially|the|a|an|of|to|with|for|from|into|at|by)$/iu;

/** True for words that are a sentence by themselves: a main clause with its verb and nothing open. Stays silent when unsure. */
export const standsAlone = (clause: string): boolean => {
  const plain = clause.replace(/[‘’ʼ]/g, "'").replace(/^(?:now|then|so|and|next|first),?\s+/i, "");
  return (SUBJECT_FIRST.test(plain) || VERB_FIRST.test(plain)) && !OPENS_CLAUSE.test(plain) && !WANTS_MORE.test(plain);
};
