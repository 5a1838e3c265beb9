/** Words that turn a sentence round, so that without them it says its opposite. */
const NEGATION = String.raw`no|not|nor|never|neither|none|nothing|nobody|nowhere|cannot|\p{L}+n't|dont|doesnt|without|avoid\w*|refrain|instead|rather than|except|unless|hardly|barely`;
/** Words that warn, or that name who helps. Wider than strictly needed: a sentence too many that stays costs a second. */
const CAUTION = String.raw`stop\w*|alone|too|careful\w*|cautio\w*|beware|watch out|mind (?:the|your)|warn\w*|danger\w*|risk\w*|safe\w*|unsafe|spotters?|spot (?:me|you|each)|collars?|pins|pain\w*|hurt\w*|injur\w*|ach(?:e|es|ing)|sore\w*|sharp\w*|dizz\w*|faint\w*|numb\w*|tingl\w*|doctors?|physicians?|physio\w*|midwi\w*|medic\w*|hospital|emergency|pregnan\w*|ask (?:a|an|your|some\w*|for)|doubt|at once`;
/** What the law wants said. */
const DISCLOSURE = String.raw`ads?|advert\w*|paid|sponsor\w*|partner\w*|gift\w*|affiliate\w*`;

const whole = (words: string): RegExp => new RegExp(String.raw`(?<![\p{L}'])(?:${words})(?![\p{L}'])`, "iu");
const KEPT = whole(`${NEGATION}|${CAUTION}|${DISCLOSURE}`);

/** True for a sentence that forbids, warns or discloses: it stays as it is, whatever the clip. */
export const mustStay = (sentence: string): boolean => KEPT.test(sentence.replace(/[‘’ʼ]/g, "'"));
