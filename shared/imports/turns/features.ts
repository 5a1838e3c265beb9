import { bucket, fieldsIn, worded } from "../learning/feature-names";
import type { Candidate } from "../order/candidates";
import { sentenceAt, type Indexed } from "../order/speech";

/** Where, before an exercise is named, the speaker turns to it: the places that may be it, and what speaks for each. */

/** So many words before a name its turn may come. */
const REACH = 70;
const SILENCE = 1.2;
/** Words with which a turn begins. */
const CUES = new Set("okay ok alright right so and then now next after first second third fourth last lastly finally final moving on over up number exercise let's we i for the to straight once from with grab a an another one here you".split(" "));

/** A turn that is looked for. */
export interface Way {
  /** The words it may begin at, in order; the last is the name itself. */
  readonly places: readonly number[];
  readonly features: readonly (readonly string[])[];
  readonly steps: readonly string[];
}

/** @param from - the end of the name of the exercise before; 0 for the first */
export function wayTo(speech: Indexed, candidate: Candidate, from: number): Way {
  const { words, sentences, statements } = speech;
  const name = candidate.span.from;
  const begins = new Set(sentences.map((sentence) => sentence.from));
  const floor = Math.max(from, name - REACH);
  const places: number[] = [];
  for (let at = floor; at <= name; at += 1) {
    const word = words[at];
    if (at === name || begins.has(at) || (word?.pause ?? 0) >= SILENCE || CUES.has(word?.plain ?? "")) places.push(at);
  }
  const between = statements.filter((statement) => statement.from >= from && statement.from < name);
  const quiet = (start: number, end: number): number => Math.max(0, ...words.slice(start, end).map(({ pause }) => pause));
  const word = (at: number): string => worded(words[at]?.plain ?? "|");
  const features = places.map((at) => {
    const pause = bucket(words[at]?.pause ?? 0, [0, 0.3, 1.2, 4, 10, 25]);
    const [ahead, behind] = [fieldsIn(between.filter((statement) => statement.from >= at)), fieldsIn(between.filter((statement) => statement.from < at))];
    const [w0, w1, w2, b1, b2] = [word(at), word(at + 1), word(at + 2), word(at - 1), word(at - 2)];
    const starts = begins.has(at);
    const away = bucket(name - at, [0, 1, 2, 4, 8, 14, 25, 40]);
    const since = at - from;
    const sentencesAway = bucket(sentenceAt(speech, name) - sentenceAt(speech, at), [0, 1, 2, 3, 5]);
    const out = [
      "bias", `w=${w0}`, `w+1=${w1}`, `w12=${w0} ${w1}`, `w123=${w0} ${w1} ${w2}`, `b=${b1}`, `b12=${b2} ${b1}`, `bw=${b1} ${w0}`,
      `pause=${pause}`, `starts=${starts}`, `pw=${pause} ${w0}`, `sw=${starts} ${w0}`, `away=${away}`, `since=${bucket(since, [0, 2, 6, 15, 40])}`, `sent=${sentencesAway}`, `sp=${starts} ${pause}`, `sent=${sentencesAway} ${pause}`,
      `quiet=${bucket(quiet(at + 1, name), [0, 1.2, 8, 20])}`, `quieter=${quiet(at + 1, name) > (words[at]?.pause ?? 0)}`, `was quiet=${bucket(quiet(from, at), [0, 1.2, 8, 20])}`,
      `ahead=${ahead.length}`, `behind=${behind.length}`, `name=${at === name} ${starts}`, `first=${from === 0}`,
    ];
    for (const field of ahead) out.push(`a ${field}`, `a ${field} ${behind.includes(field) ? "again" : "new"}`, `a ${field} ${w0}`);
    for (const field of behind) out.push(`d ${field}`);
    for (let step = 1; step <= 5; step += 1) out.push(`a=${word(at + step)}`, `bb=${word(at - step)}`);
    return out;
  });
  return { places, features, steps: places.map((at, index) => (index === 0 ? "" : `${begins.has(at)} ${word(at)}`)) };
}
