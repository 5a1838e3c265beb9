import type { Candidate } from "./candidates";
import { closingFrom, fromLists, unnamedEnds } from "./ends";
import { ENOUGH, isApposition, isCountedFrom, isOnlyAnnounced, isRecap, narrows, points, refersTo } from "./points";
import { COOL_DOWN, GREETING, LEADS_OVER, NO_WARM_UP, NOT_COOL_DOWN, STRETCHES, WARM_UP, WARM_UP_OVER } from "./signals";
import { indexed, isMobile, statementsIn, type Indexed, type Opened, type Part, type Speech } from "./speech";

/** Silence within a warm-up after which it may be over. */
const WARMED = 8;

/** A warm-up named so many words after an exercise is that exercise's own. */
const OF_ONE = 6;

const WAS_WARM_UP = /\bthat's (?:it for )?(?:the|our|your) (?:whole )?warm ?up\b/;
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
  // "First up squats, I warm up with the bar": the warm-up of one exercise.
  const ofOne = (number: number): boolean => candidates.some((each) => each.sentence === number && each.isThing && !each.passing && each.strength > 0 && !isMobile(each) && speech.words.slice(each.span.to, Math.min(each.span.to + OF_ONE, sentences[number]?.to ?? 0)).some(({ plain }) => plain === "warm" || plain === "warmup"));
  const warms = said.map((text, number) => beginsWarmUp(text) && !ofOne(number));
  const warmAt = warms.indexOf(true);
  const announced = warmAt >= 0 && warmAt < sentences.length * 0.45 ? warmAt : 0;
  /** Easy exercises in this sentence and the next, where this one has any. */
  const easyFrom = (number: number): number => {
    const easy = candidates.filter((each) => (each.sentence === number || each.sentence === number + 1) && isMobile(each) && !each.passing && each.isThing);
    return easy.some(({ sentence }) => sentence === number) ? new Set(easy.map(({ name }) => name.title)).size : 0;
  };
  const done = (candidate: Candidate): boolean => opened.some(({ candidate: other }) => other !== null && other.name.title === candidate.name.title);
  for (let number = 0; number < sentences.length; number += 1) {
    const text = said[number] ?? "";
    if (zone === "before" && warms[number] === true) {
      zone = "warm-up";
      // "That's the warm-up" is said at its end.
      const easy = WAS_WARM_UP.test(text) ? candidates.find((each) => each.sentence >= number - 10 && each.sentence < number && isMobile(each) && !each.passing) : undefined;
      opened.push({ sentence: easy?.sentence ?? number, kind: "warm-up", candidate: null });
    } else if (zone === "before" && !mobileIsMain && easyFrom(number) >= 2) {
      // Two easy exercises in one breath before any work are the warm-up, whether it is called so or not.
      zone = "warm-up";
      opened.push({ sentence: number, kind: "warm-up", candidate: null });
    } else if (zone === "warm-up" && WARM_UP_OVER.test(text) && number > (opened[0]?.sentence ?? 0)) ready = true;
    if (zone === "main" && (COOL_DOWN.test(text) || STRETCHES.test(`${text} ${said[number + 1] ?? ""}`)) && !NOT_COOL_DOWN.test(text) && number > sentences.length * 0.4) {
      zone = "cool-down";
      opened.push({ sentence: number, kind: "cool-down", candidate: null });
      open = null;
    }
    if (zone === "warm-up" && (speech.silences[number - 1] ?? 0) >= WARMED && number - 1 >= (opened.find(({ kind }) => kind === "warm-up")?.sentence ?? 0)) rested = true;
    for (; at < candidates.length && (candidates[at]?.sentence ?? Infinity) === number; at += 1) {
      const candidate = candidates[at] as Candidate;
      if (open !== null && refersTo(candidate, open)) continue;
      if (isRecap(speech, at, opened.flatMap((each) => each.candidate ?? []))) continue;
      if (open !== null && narrows(candidate, open, speech)) {
        // "Lunges. Walking lunges": the second says which.
        opened[opened.length - 1] = { ...(opened.at(-1) as Opened), candidate };
        open = candidate;
        continue;
      }
      if (open !== null && isApposition(candidate, open)) continue;
      const [before, last] = [opened.at(-2), opened.at(-1)];
      if (before?.candidate?.name.title === candidate.name.title && last?.candidate?.paired !== true && candidate.isThing && !candidate.passing && last && number - last.sentence <= 2 && last.kind === "exercise" && statementsIn(speech, last.sentence, number).length === 0) {
        // "Squats, and we pair them with push-ups. So the squats": the second was only announced, and comes later.
        opened.pop();
        open = before.candidate;
        continue;
      }
      if (done(candidate) || number < announced || isOnlyAnnounced(speech, at)) continue;
      const sum = points(speech, at, circuit < number);
      if (sum < ENOUGH) continue;
      const counted = isCountedFrom(speech, at, zone === "warm-up");
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
  const { said, sentences, candidates } = speech;
  const meant = candidates.filter((candidate) => candidate.isThing && !candidate.passing);
  const mobileIsMain = meant.filter(isMobile).length > meant.length * 0.6;
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
    parts.push({ from: 0, to: head, kind: greets ? "opening" : "talk", title: "", exercise: null, named: null, said: "", pair: null });
  }
  marks.forEach(({ kind, candidate }, at) => {
    // Names of one sentence share it: the first keeps its words, the last has what follows, those between have none of their own.
    const start = starts[at] ?? 0;
    const follows = starts[at - 1] === start;
    const leads = starts[at + 1] === start;
    const from = follows ? start + 1 : start;
    const to = leads ? (follows ? from : start + 1) : Math.max(from, starts[at + 1] ?? sentences.length);
    parts.push({ from, to, kind, title: candidate && !candidate.name.exercise ? candidate.name.title : "", exercise: candidate?.name.exercise ?? null, named: candidate && !candidate.listed && !candidate.paired ? candidate.span.from : null, said: candidate?.name.words.join(" ") ?? "", pair: candidate?.paired === true && (follows || leads) ? start : null });
  });
  return parts;
}
