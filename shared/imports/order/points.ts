import { NUMBER_VALUES } from "../../speech";
import { hasWork } from "../schemes/compose";
import type { Statement } from "../schemes/statement";
import type { Candidate } from "./candidates";
import { statementsIn, type Indexed, type Speech } from "./speech";

/** What speaks for a name beginning a block of its own. */

/** Points from which a name begins a block. */
export const ENOUGH = 2;
/** How many sentences after a name its scheme and its teaching may come. */
const REACH = 8;

/** So long nobody is silent who is not exercising. Seconds. */
const WORKING = 12;
export const isCounted = ({ says, about }: Statement): boolean => about !== "ramp-up" && (says.sets !== undefined || says.reps !== undefined || says.emomMinutes !== undefined);

/** "Twelve push-ups", "fifteen of those" right after the name. Fewer than four before a name is an order. */
function isNumbered({ words }: Speech, { span }: Candidate): boolean {
  const value = (at: number): number => {
    const plain = words[at]?.plain ?? "";
    return NUMBER_VALUES.get(plain) ?? (/^\d+$/.test(plain) ? Number(plain) : 0);
  };
  return value(span.from - 1) >= 4 || (value(span.to) >= 4 && (/^(?:of|each|reps?|a|per)$/.test(words[span.to + 1]?.plain ?? "") || words[span.to + 1]?.plain === words[span.from]?.plain));
}

/** Points for a name beginning a block of its own. */
export function points(speech: Indexed, at: number, inCircuit: boolean): number {
  const { candidates, teaches, said } = speech;
  const candidate = candidates[at] as Candidate;
  const { sentence, strength, passing, listed, paired, takenBack, isThing, sure } = candidate;
  if (takenBack) return -9;
  const until = Math.min(sentence + REACH, rivalOf(speech, at));
  let sum = [0, 1.2, 2.1][strength] ?? 0;
  if (/^(?:um |uh )?(?:okay|ok|alright|all right|right|so|next|now|then|and then|good|great|nice|cool|perfect|moving on|first|last|finally|lovely|brilliant)\b/.test(said[sentence] ?? "")) sum += 0.6;
  const after = statementsIn(speech, sentence + 1, until);
  if (until > sentence && statementsIn(speech, sentence, sentence + 1).some((statement) => isCounted(statement) || statement.rank !== "extra")) sum += 1.5;
  else if (after.some(isCounted)) sum += 1.2;
  else if (after.some(({ rank }) => rank === "part")) sum += 0.6;
  if (isNumbered(speech, candidate)) sum += 0.8;
  const teaching = teaches.slice(sentence, Math.min(until, sentence + REACH)).filter(Boolean).length;
  sum += Math.min(1.2, teaching * 0.4);
  // Sets are done in silence.
  if (speech.silences.slice(sentence, until).some((seconds) => seconds >= WORKING)) sum += inCircuit ? 1.2 : 0.6;
  if (candidate.name.sound === "" && !isCountedFrom(speech, at)) {
    // A name that no list holds needs more: sets, or work that is said and then done in silence.
    const isDone = strength > 0 && after.some(({ says, rank }) => rank === "part" && hasWork(says)) && speech.silences.slice(sentence, until).some((seconds) => seconds >= WORKING);
    sum -= isDone ? 0.7 : inCircuit && strength === 2 ? 0.5 : 2;
  }
  if (candidate.name.everyday && strength === 0) sum -= 1;
  if (!isThing) sum -= 5;
  if (sure < 0.95) sum -= strength === 0 ? 0.8 : 0.2;
  if (candidate.name.everyday) sum -= 0.3;
  if (listed) sum -= 2.2;
  if (paired) sum += 1;
  if (passing) sum -= 4;
  return sum;
}

/** "The squat" in a block of goblet squats is that one: every word of the name is in the block's own. */
export function refersTo(candidate: Candidate, open: Candidate): boolean {
  if (candidate.name.title === open.name.title) return true;
  const own = new Set([...open.name.words, ...(open.name.exercise ? open.name.exercise.name.toLowerCase().split(/[^a-z]+/) : [])]);
  return candidate.name.words.length < open.name.words.length + 1 && candidate.name.words.every((word) => own.has(word) || open.name.letters.includes(word));
}

/** "Round two, squats": a short name of one that was done, and nothing is counted for it. */
export const isRecap = (speech: Indexed, at: number, done: readonly Candidate[]): boolean => {
  const candidate = speech.candidates[at] as Candidate;
  const [count, round] = [candidate.span.from - 1, candidate.span.from - 2].map((place) => speech.words[place]?.plain ?? "");
  const inRound = round === "round" || count === "round";
  return (candidate.name.words.length === 1 || (candidate.name.everyday && candidate.name.words.length === 2) ? candidate.strength < 2 || inRound : inRound) && done.some((other) => refersTo(candidate, other)) && !isCountedFrom(speech, at);
};

/** The sentence of the next name that is introduced as another exercise. */
export function rivalOf({ candidates }: Speech, at: number): number {
  const candidate = candidates[at] as Candidate;
  for (let place = at + 1; place < candidates.length; place += 1) {
    const other = candidates[place] as Candidate;
    if (other.passing || !other.isThing || other.name.title === candidate.name.title) continue;
    // "Ankle circles, okay, the first exercise is the leg press": what follows in the same breath is the other's.
    if (other.sentence === candidate.sentence ? other.strength > candidate.strength : other.strength >= 1) return other.sentence;
  }
  return Infinity;
}

/** Are several sets said for it before another exercise comes? @param own - what is said of a whole circuit does not count */
export function isCountedFrom(speech: Indexed, at: number, own = false): boolean {
  const from = (speech.candidates[at] as Candidate).sentence;
  const until = Math.min(from + REACH, rivalOf(speech, at));
  return statementsIn(speech, from, until).some((statement) => isCounted(statement) && !(own && statement.about === "circuit") && ((statement.says.sets ?? 0) > 1 || statement.says.reps !== undefined || statement.says.emomMinutes !== undefined));
}

/** Named without its sets, and named again later with them: this was only the announcement. */
export const isOnlyAnnounced = (speech: Indexed, at: number): boolean => {
  const { name, sentence, listed } = speech.candidates[at] as Candidate;
  if (isCountedFrom(speech, at)) return false;
  return speech.candidates.some((later, place) => place > at && later.name.title === name.title && later.sentence > sentence + (listed ? 0 : 3) && later.strength >= 1 && !later.passing && isCountedFrom(speech, place));
};

/** "Split squats, the Bulgarian kind". */
const KIND = /^(?:kind|ones?|version|style|variety|type)$/;

/** Is it the open exercise, said again straight away and more exactly? */
export function narrows(candidate: Candidate, open: Candidate, { words }: Speech): boolean {
  if (!candidate.isThing || candidate.passing || candidate.sentence - open.sentence > 1) return false;
  if (candidate.span.from - open.span.to <= 2 && KIND.test(words[candidate.span.to]?.plain ?? "")) return true;
  return candidate.name.words.length > open.name.words.length && open.name.words.every((word) => candidate.name.words.includes(word));
}
