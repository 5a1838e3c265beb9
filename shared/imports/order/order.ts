import { fromLists } from "./lists";
import { GREETING, LEADS_OVER } from "./signals";
import { sentenceAt, type Opened, type Part, type Speech } from "./speech";

/** Where exercises begin, where the warm-up does and where the cool-down; before the closing is looked for. */
function openings(speech: Speech): Opened[] {
  const { begun, zones, sentences } = speech;
  const opened: Opened[] = begun.map(({ turn, candidate }) => ({ sentence: sentenceAt(speech, turn), kind: "exercise", turn, candidate }));
  const first = opened[0]?.sentence ?? sentences.length;
  const last = opened.at(-1)?.sentence ?? -1;
  const warm = zones.indexOf("warm-up");
  if (warm >= 0 && warm < first) opened.unshift({ sentence: warm, kind: "warm-up", turn: null, candidate: null });
  const cool = zones.findIndex((zone, number) => zone === "cool-down" && number > last);
  if (cool >= 0) opened.push({ sentence: cool, kind: "cool-down", turn: null, candidate: null });
  return opened;
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
export function runningOrder(speech: Speech): Part[] {
  const { said, sentences } = speech;
  let opened = openings(speech);
  const listed = fromLists(speech, opened);
  if (listed.length > 0) opened = [...opened, ...listed].sort((a, b) => a.sentence - b.sentence);
  const lastOpened = opened.at(-1)?.sentence ?? 0;
  const closing = speech.zones.findIndex((zone, number) => zone === "closing" && number > lastOpened);
  const marks: Opened[] = closing < 0 ? opened : [...opened.filter(({ sentence }) => sentence < closing), { sentence: closing, kind: "closing", turn: null, candidate: null }];
  const parts: Part[] = [];
  const starts = marks.map(({ sentence }, at) => (marks[at - 1]?.sentence === sentence ? sentence : ledFrom(said, sentence, marks[at - 1]?.sentence ?? -1)));
  const head = starts[0] ?? sentences.length;
  if (head > 0) {
    const greets = said.slice(0, head).some((text) => GREETING.test(text)) || marks.length > 0;
    parts.push({ from: 0, to: head, kind: greets ? "opening" : "talk", title: "", exercise: null, named: null, begins: null, said: "", pair: null });
  }
  marks.forEach(({ kind, turn, candidate }, at) => {
    // Names of one sentence share it: the first keeps its words, the last has what follows, those between have none of their own.
    const start = starts[at] ?? 0;
    const follows = starts[at - 1] === start;
    const leads = starts[at + 1] === start;
    const from = follows ? start + 1 : start;
    const to = leads ? (follows ? from : start + 1) : Math.max(from, starts[at + 1] ?? sentences.length);
    parts.push({ from, to, kind, title: candidate && !candidate.name.exercise ? candidate.name.title : "", exercise: candidate?.name.exercise ?? null, named: candidate && !candidate.listed && !candidate.paired ? candidate.span.from : null, begins: candidate ? { turn: follows ? candidate.span.from : (turn ?? candidate.span.from), name: candidate.span.from } : null, said: candidate?.name.words.join(" ") ?? "", pair: candidate?.paired === true && (follows || leads) ? start : null });
  });
  return parts;
}
