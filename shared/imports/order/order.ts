import type { Candidate } from "./candidates";
import { fromLists } from "./lists";
import { variantOf } from "../names/variant";
import { narrows, refersTo } from "./points";
import { GREETING, LEADS_OVER } from "./signals";
import { indexed, sentenceAt, type Indexed, type Opened, type Part, type Speech } from "./speech";

/** "The bench press", "on the flat bench" after dumb-bell bench presses is that one still. */
const STILL = 6;
function isStill(candidate: Candidate, last: Candidate): boolean {
  if (refersTo(candidate, last)) return true;
  return candidate.sentence === last.sentence && candidate.span.from - last.span.to <= STILL && !candidate.paired && candidate.name.words.length <= last.name.words.length && candidate.name.words.some((word) => last.name.words.includes(word));
}

/** The word at which the speaker turns to an exercise. */
const turnTo = ({ turns }: Speech, { span }: Candidate): number => turns.get(span.from) ?? span.from;

/** Names that begin blocks, where the warm-up begins and where the cool-down does; before the closing is looked for. */
function openings(speech: Indexed): Opened[] {
  const { candidates, sentences, starts, zones } = speech;
  const begun = new Set<string>();
  // Of exercises that are done in turn and named in one breath, all begin where one does.
  const inTurn = new Set(candidates.filter((candidate) => candidate.paired && starts.has(candidate)).map(({ sentence }) => sentence));
  const named = candidates.filter((candidate) => (starts.has(candidate) || (candidate.paired && inTurn.has(candidate.sentence))) && !begun.has(candidate.name.title) && begun.add(candidate.name.title));
  const mains = named.filter((candidate, at) => (named[at - 1] === undefined || !isStill(candidate, named[at - 1] as Candidate)) && (named[at + 1] === undefined || !narrows(named[at + 1] as Candidate, candidate, speech)));
  const opened: Opened[] = mains.map((candidate, at) => ({ sentence: sentenceAt(speech, turnTo(speech, candidate)), kind: "exercise", candidate: { ...candidate, name: variantOf(candidate.name, candidate.span, speech.words, turnTo(speech, candidate), mains[at + 1] ? turnTo(speech, mains[at + 1] as Candidate) : speech.words.length) } }));
  const first = mains[0]?.sentence ?? sentences.length;
  const last = mains.at(-1)?.sentence ?? -1;
  const warm = zones.indexOf("warm-up");
  if (warm >= 0 && warm < first) opened.push({ sentence: warm, kind: "warm-up", candidate: null });
  const cool = zones.findIndex((zone, number) => zone === "cool-down" && number > last);
  if (cool >= 0) opened.push({ sentence: cool, kind: "cool-down", candidate: null });
  return opened.sort((a, b) => a.sentence - b.sentence || (a.candidate?.span.from ?? 0) - (b.candidate?.span.from ?? 0));
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
  const speech = indexed(given);
  const { said, sentences } = speech;
  let opened = openings(speech);
  const listed = fromLists(speech, opened);
  if (listed.length > 0) opened = [...opened, ...listed].sort((a, b) => a.sentence - b.sentence);
  const lastOpened = opened.at(-1)?.sentence ?? 0;
  const closing = speech.zones.findIndex((zone, number) => zone === "closing" && number > lastOpened);
  const marks: Opened[] = closing < 0 ? opened : [...opened.filter(({ sentence }) => sentence < closing), { sentence: closing, kind: "closing", candidate: null }];
  const parts: Part[] = [];
  const starts = marks.map(({ sentence }, at) => (marks[at - 1]?.sentence === sentence ? sentence : ledFrom(said, sentence, marks[at - 1]?.sentence ?? -1)));
  const head = starts[0] ?? sentences.length;
  if (head > 0) {
    const greets = said.slice(0, head).some((text) => GREETING.test(text)) || marks.length > 0;
    parts.push({ from: 0, to: head, kind: greets ? "opening" : "talk", title: "", exercise: null, named: null, begins: null, said: "", pair: null });
  }
  marks.forEach(({ kind, candidate }, at) => {
    // Names of one sentence share it: the first keeps its words, the last has what follows, those between have none of their own.
    const start = starts[at] ?? 0;
    const follows = starts[at - 1] === start;
    const leads = starts[at + 1] === start;
    const from = follows ? start + 1 : start;
    const to = leads ? (follows ? from : start + 1) : Math.max(from, starts[at + 1] ?? sentences.length);
    parts.push({ from, to, kind, title: candidate && !candidate.name.exercise ? candidate.name.title : "", exercise: candidate?.name.exercise ?? null, named: candidate && !candidate.listed && !candidate.paired ? candidate.span.from : null, begins: candidate ? { turn: follows ? candidate.span.from : turnTo(speech, candidate), name: candidate.span.from } : null, said: candidate?.name.words.join(" ") ?? "", pair: candidate?.paired === true && (follows || leads) ? start : null });
  });
  return parts;
}
