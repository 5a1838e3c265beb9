import type { BlockKind } from "../../episode";
import type { Exercise, Family } from "../../exercises";
import type { Statement } from "../schemes/statement";
import type { Span, Word } from "../types";
import type { Candidate } from "./candidates";
import { CLOSING, COOL_DOWN, FAREWELL, GREETING, LEADS_OVER, NO_WARM_UP, NOT_COOL_DOWN, SURE_CLOSING, WARM_UP, WARM_UP_OVER } from "./signals";

/** A part of the running order, in sentences. */
export interface Part extends Span {
  readonly kind: BlockKind;
  readonly title: string;
  readonly exercise: Exercise | null;
}

/** What the running order is made from. */
export interface Speech {
  readonly words: readonly Word[];
  readonly sentences: readonly Span[];
  /** The sentences' plain words. */
  readonly said: readonly string[];
  readonly candidates: readonly Candidate[];
  readonly statements: readonly (Statement & { readonly sentence: number })[];
  /** Seconds of silence after each sentence; 0 where unknown. */
  readonly silences: readonly number[];
  /** Sentences that tell the viewer what to do. */
  readonly teaches: readonly boolean[];
}

/** The same with its statements by sentence, so that a long speech is not searched whole for each name. */
interface Indexed extends Speech {
  readonly bySentence: ReadonlyMap<number, readonly Placed[]>;
}

const PREPARING: readonly Family[] = ["mobility-warmup"];
const EASING: readonly Family[] = ["cooldown-stretch"];
const EASY_NAME = /\b(?:stretch|pose|hip switch|downward dog|upward dog|thread the needle|airplane|shin box)\b/;

const isFamily = ({ name }: Candidate, families: readonly Family[]): boolean => (name.exercise ? families.includes(name.exercise.family) : families.length > 0 && EASY_NAME.test(name.title.toLowerCase()));
const isMobile = (candidate: Candidate): boolean => isFamily(candidate, [...PREPARING, ...EASING]);

/** Points from which a name begins a block. */
const ENOUGH = 2;
/** How many sentences after a name its scheme and its teaching may come. */
const REACH = 8;

/** So long nobody is silent who is not exercising. Seconds. */
const WORKING = 12;
/** Silence within a warm-up after which it may be over. */
const WARMED = 8;

type Placed = Speech["statements"][number];

/** The statements of the sentences from `from` up to, not including, `until`. */
function statementsIn({ bySentence }: Indexed, from: number, until: number): Placed[] {
  const found: Placed[] = [];
  for (let sentence = from; sentence < until; sentence += 1) found.push(...(bySentence.get(sentence) ?? []));
  return found;
}

const isCounted = ({ says, about }: Statement): boolean => about !== "ramp-up" && (says.sets !== undefined || says.reps !== undefined || says.emomMinutes !== undefined);

/** Points for a name beginning a block of its own. */
function points(speech: Indexed, at: number, inCircuit: boolean): number {
  const { candidates, teaches, said } = speech;
  const candidate = candidates[at] as Candidate;
  const { sentence, strength, passing, listed, takenBack, isThing, sure } = candidate;
  if (takenBack) return -9;
  const until = Math.min(sentence + REACH, rivalOf(speech, at));
  let sum = [0, 1.2, 2.1][strength] ?? 0;
  if (/^(?:um |uh )?(?:okay|ok|alright|all right|right|so|next|now|then|and then|good|great|nice|cool|perfect|moving on|first|last|finally|lovely|brilliant)\b/.test(said[sentence] ?? "")) sum += 0.6;
  const after = statementsIn(speech, sentence + 1, until);
  if (until > sentence && statementsIn(speech, sentence, sentence + 1).some((statement) => isCounted(statement) || statement.rank !== "extra")) sum += 1.5;
  else if (after.some(isCounted)) sum += 1.2;
  else if (after.some(({ rank }) => rank === "part")) sum += 0.6;
  const teaching = teaches.slice(sentence, Math.min(until, sentence + REACH)).filter(Boolean).length;
  sum += Math.min(1.2, teaching * 0.4);
  // Sets are done in silence.
  if (speech.silences.slice(sentence, until).some((seconds) => seconds >= WORKING)) sum += inCircuit ? 1.2 : 0.6;
  if (candidate.name.sound === "" && !isCountedFrom(speech, at)) sum -= inCircuit && strength === 2 ? 0.5 : 2;
  if (candidate.name.everyday && strength === 0) sum -= 1;
  if (!isThing) sum -= 5;
  if (sure < 0.95) sum -= strength === 0 ? 0.8 : 0.2;
  if (candidate.name.everyday) sum -= 0.3;
  if (listed) sum -= 2.2;
  if (passing) sum -= 4;
  return sum;
}

/** "The squat" in a block of goblet squats is that one: every word of the name is in the block's own. */
function refersTo(candidate: Candidate, open: Candidate): boolean {
  if (candidate.name.title === open.name.title) return true;
  const own = new Set([...open.name.words, ...(open.name.exercise ? open.name.exercise.name.toLowerCase().split(/[^a-z]+/) : [])]);
  return candidate.name.words.length < open.name.words.length + 1 && candidate.name.words.every((word) => own.has(word) || open.name.letters.includes(word));
}

/** The sentence of the next name that is introduced as another exercise. */
function rivalOf({ candidates }: Speech, at: number): number {
  const candidate = candidates[at] as Candidate;
  for (let place = at + 1; place < candidates.length; place += 1) {
    const other = candidates[place] as Candidate;
    if (other.passing || !other.isThing || other.name.title === candidate.name.title) continue;
    // "Ankle circles, okay, the first exercise is the leg press": what follows in the same breath is the other's.
    if (other.sentence === candidate.sentence ? other.strength > candidate.strength : other.strength >= 1) return other.sentence;
  }
  return Infinity;
}

/** Are several sets said for it before another exercise comes? */
function isCountedFrom(speech: Indexed, at: number): boolean {
  const from = (speech.candidates[at] as Candidate).sentence;
  const until = Math.min(from + REACH, rivalOf(speech, at));
  return statementsIn(speech, from, until).some((statement) => isCounted(statement) && ((statement.says.sets ?? 0) > 1 || statement.says.reps !== undefined || statement.says.emomMinutes !== undefined));
}

/** Named without its sets, and named again later with them: this was only the announcement. */
const isOnlyAnnounced = (speech: Indexed, at: number): boolean => {
  const { name, sentence, listed } = speech.candidates[at] as Candidate;
  if (isCountedFrom(speech, at)) return false;
  return speech.candidates.some((later, place) => place > at && later.name.title === name.title && later.sentence > sentence + (listed ? 0 : 3) && later.strength >= 1 && !later.passing && isCountedFrom(speech, place));
};

/** Is it the open exercise, said again straight away and more exactly? */
const narrows = (candidate: Candidate, open: Candidate): boolean =>
  candidate.isThing && !candidate.passing && candidate.sentence - open.sentence <= 1 && candidate.name.words.length > open.name.words.length && open.name.words.every((word) => candidate.name.words.includes(word));

interface Opened {
  readonly sentence: number;
  readonly kind: BlockKind;
  readonly candidate: Candidate | null;
}

const beginsWarmUp = (text: string): boolean => WARM_UP.test(text) && !NO_WARM_UP.test(text) && !/\b(?:for|in|during) (?:the|a|your) warm ?up\b/.test(text);

/** Names that begin blocks, where the warm-up begins and where the cool-down does; before the closing is looked for. */
function openings(speech: Indexed, mobileIsMain: boolean): Opened[] {
  const { said, candidates, sentences } = speech;
  const opened: Opened[] = [];
  let zone: "before" | "warm-up" | "main" | "cool-down" = "before";
  let open: Candidate | null = null;
  let ready = false;
  let rested = false;
  let at = 0;
  const circuit = speech.statements.find(({ says, about }) => (says.seconds !== undefined && says.restSeconds !== undefined) || (about === "circuit" && says.sets !== undefined))?.sentence ?? Infinity;
  // What is named before the warm-up is only announced.
  const warmAt = said.findIndex((text) => beginsWarmUp(text));
  const announced = warmAt >= 0 && warmAt < sentences.length * 0.45 ? warmAt : 0;
  const done = (candidate: Candidate): boolean => opened.some(({ candidate: other }) => other !== null && other.name.title === candidate.name.title);
  for (let number = 0; number < sentences.length; number += 1) {
    const text = said[number] ?? "";
    if (zone === "before" && beginsWarmUp(text)) {
      zone = "warm-up";
      opened.push({ sentence: number, kind: "warm-up", candidate: null });
    } else if (zone === "before" && candidates.filter((each) => each.sentence === number && isMobile(each) && !each.passing && each.isThing).length >= 2 && !mobileIsMain) {
      // Two easy exercises in one breath before any work are the warm-up, whether it is called so or not.
      zone = "warm-up";
      opened.push({ sentence: number, kind: "warm-up", candidate: null });
    } else if (zone === "warm-up" && WARM_UP_OVER.test(text) && number > (opened[0]?.sentence ?? 0)) ready = true;
    if (zone === "main" && COOL_DOWN.test(text) && !NOT_COOL_DOWN.test(text) && number > sentences.length * 0.4) {
      zone = "cool-down";
      opened.push({ sentence: number, kind: "cool-down", candidate: null });
      open = null;
    }
    if (zone === "warm-up" && (speech.silences[number - 1] ?? 0) >= WARMED && number - 1 >= (opened.find(({ kind }) => kind === "warm-up")?.sentence ?? 0)) rested = true;
    for (; at < candidates.length && (candidates[at]?.sentence ?? Infinity) === number; at += 1) {
      const candidate = candidates[at] as Candidate;
      if (open !== null && refersTo(candidate, open)) continue;
      if (open !== null && narrows(candidate, open)) {
        // "Lunges. Walking lunges": the second says which.
        opened[opened.length - 1] = { ...(opened.at(-1) as Opened), candidate };
        open = candidate;
        continue;
      }
      const [before, last] = [opened.at(-2), opened.at(-1)];
      if (before?.candidate?.name.title === candidate.name.title && candidate.isThing && !candidate.passing && last && number - last.sentence <= 2 && last.kind === "exercise" && statementsIn(speech, last.sentence, number).length === 0) {
        // "Squats, and we pair them with push-ups. So the squats": the second was only announced, and comes later.
        opened.pop();
        open = before.candidate;
        continue;
      }
      if (done(candidate) || number < announced || isOnlyAnnounced(speech, at)) continue;
      const sum = points(speech, at, circuit < number);
      if (sum < ENOUGH) continue;
      const counted = isCountedFrom(speech, at);
      // A circuit counts for all: what is then introduced after the warm-up was done in silence is its first exercise.
      const inCircuit = circuit < number && rested && candidate.strength >= 1 && !isMobile(candidate);
      if (zone === "warm-up" && !ready && !inCircuit && (!counted || (isMobile(candidate) && candidate.strength < 2))) continue;
      if (zone === "warm-up" && ready && isMobile(candidate) && !mobileIsMain && !counted) continue;
      if (zone === "cool-down" && (isMobile(candidate) || !counted || candidate.strength < 2)) continue;
      zone = "main";
      open = candidate;
      opened.push({ sentence: number, kind: "exercise", candidate });
    }
  }
  return opened;
}

/** Exercises that were only ever named in a list of what is to come, where nothing of it came by itself. */
function fromLists(speech: Speech, opened: readonly Opened[]): Opened[] {
  const { candidates, said } = speech;
  const titles = new Set(opened.map(({ candidate }) => candidate?.name.title));
  const spoken = candidates.filter(({ listed, passing, takenBack, isThing, name }) => listed && !passing && !takenBack && isThing && !titles.has(name.title));
  const byOne = new Map<number, Candidate[]>();
  for (const candidate of spoken) byOne.set(candidate.sentence, [...(byOne.get(candidate.sentence) ?? []), candidate]);
  const mains = opened.filter(({ kind }) => kind === "exercise").length;
  const warm = opened.find(({ kind }) => kind === "warm-up")?.sentence ?? Infinity;
  const firstMain = opened.find(({ kind }) => kind === "exercise")?.sentence ?? Infinity;
  const cool = opened.find(({ kind }) => kind === "cool-down")?.sentence ?? Infinity;
  // A circuit that is told in one breath, and nothing else in the episode that it could be a preview of.
  const whole = [...byOne].find(([sentence, list]) => list.length >= 2 && list.length > mains && !(sentence > warm && sentence < firstMain) && sentence < cool && !/\b(?:next (?:week|time)|last (?:week|time)|later)\b/.test(said[sentence] ?? ""));
  if (!whole) return [];
  const seen = new Set<string>();
  return whole[1].filter(({ name }) => !seen.has(name.title) && seen.add(name.title)).map((candidate) => ({ sentence: whole[0], kind: "exercise", candidate }));
}

/** A run of easy exercises before the work is the warm-up, after it the cool-down, where the coach gave them no name. */
function unnamedEnds(opened: readonly Opened[], speech: Indexed): Opened[] {
  const isMain = ({ candidate, kind }: Opened): boolean => kind === "exercise" && candidate !== null && !isMobile(candidate);
  const mains = opened.filter(isMain).length;
  const exercises = opened.filter(({ kind }) => kind === "exercise").length;
  if (mains === 0 || mains < exercises * 0.4) return [...opened];
  const counted = ({ sentence }: Opened): boolean => statementsIn(speech, sentence, sentence + 5).some(({ says }) => (says.sets ?? 0) > 1);
  const first = opened.findIndex(isMain);
  const last = opened.findLastIndex(isMain);
  const out: Opened[] = [];
  opened.forEach((each, at) => {
    const easy = each.kind === "exercise" && !isMain(each) && each.candidate !== null && !counted(each);
    if (easy && at < first) {
      if (!out.some(({ kind }) => kind === "warm-up")) out.push({ sentence: each.sentence, kind: "warm-up", candidate: null });
    } else if (easy && at > last) {
      if (!out.some(({ kind }) => kind === "cool-down")) out.push({ sentence: each.sentence, kind: "cool-down", candidate: null });
    } else out.push(each);
  });
  return out;
}

/** The sentence the closing begins with, or null. It is looked for in the last part, from the back. */
function closingFrom({ said, sentences, statements, candidates }: Speech, after: number): number | null {
  const least = Math.max(after + 1, Math.floor(sentences.length * 0.5));
  // A farewell after which exercises still begin was only a manner of speaking.
  const lastStart = candidates.reduce((last, { sentence, strength, passing }) => (strength === 2 && !passing ? Math.max(last, sentence) : last), -1);
  const sure = said.findIndex((text, number) => number >= least && SURE_CLOSING.test(text) && lastStart < number + 5);
  const any = said.findLastIndex((text, number) => number >= least && CLOSING.test(text));
  const last = said.findIndex((text, number) => number >= Math.max(least, sentences.length - 3) && FAREWELL.test(text) && !statements.some(({ sentence }) => sentence === number));
  let from = sure >= 0 ? sure : any >= sentences.length - 6 ? any : last;
  if (from < 0) return null;
  // Earlier sentences of farewell belong to it, as long as nothing is taught or counted between.
  for (let number = from - 1; number >= least && number >= from - 5; number -= 1) {
    if (statements.some(({ sentence }) => sentence === number)) break;
    if (CLOSING.test(said[number] ?? "")) from = number;
  }
  return from;
}

/** Sentences that only lead over to the next part are its first. */
function ledFrom(said: readonly string[], sentence: number, floor: number): number {
  let from = sentence;
  while (from - 1 > floor && (said[from - 1] ?? "").split(" ").length <= 6 && LEADS_OVER.test(said[from - 1] ?? "")) from -= 1;
  return from;
}

/**
 * The running order of what was said: opening, warm-up, exercises in order, cool-down, closing. Every sentence is in one part.
 * What no part claims stands before the first or after the last of them: an opening when it greets, talk when it does not.
 */
export function runningOrder(given: Speech): Part[] {
  const bySentence = new Map<number, Placed[]>();
  for (const statement of given.statements) bySentence.set(statement.sentence, [...(bySentence.get(statement.sentence) ?? []), statement]);
  const speech: Indexed = { ...given, bySentence };
  const { said, sentences, candidates } = speech;
  const mobile = candidates.filter((candidate) => candidate.isThing && !candidate.passing);
  const mobileIsMain = mobile.filter(isMobile).length > mobile.length * 0.6;
  let opened = unnamedEnds(openings(speech, mobileIsMain), speech);
  const listed = fromLists(speech, opened);
  if (listed.length > 0) opened = [...opened, ...listed].sort((a, b) => a.sentence - b.sentence);
  const closing = closingFrom(speech, opened.at(-1)?.sentence ?? 0);
  const marks: Opened[] = closing === null ? opened : [...opened.filter(({ sentence }) => sentence < closing), { sentence: closing, kind: "closing", candidate: null }];
  const parts: Part[] = [];
  const starts = marks.map(({ sentence }, at) => (marks[at - 1]?.sentence === sentence ? sentence : ledFrom(said, sentence, marks[at - 1]?.sentence ?? -1)));
  const head = starts[0] ?? sentences.length;
  if (head > 0) {
    const greets = said.slice(0, head).some((text) => GREETING.test(text)) || marks.length > 0;
    parts.push({ from: 0, to: head, kind: greets ? "opening" : "talk", title: "", exercise: null });
  }
  marks.forEach(({ kind, candidate }, at) => {
    // Names of one sentence share it: the first keeps its words, the last has what follows, those between have none of their own.
    const start = starts[at] ?? 0;
    const follows = starts[at - 1] === start;
    const leads = starts[at + 1] === start;
    const from = follows ? start + 1 : start;
    const to = leads ? (follows ? from : start + 1) : Math.max(from, starts[at + 1] ?? sentences.length);
    parts.push({ from, to, kind, title: candidate && !candidate.name.exercise ? candidate.name.title : "", exercise: candidate?.name.exercise ?? null });
  });
  return parts;
}
