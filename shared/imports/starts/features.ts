import { bucket, fieldsIn, worded } from "../learning/feature-names";
import type { Candidate } from "../order/candidates";
import { ENOUGH, isCountedFrom, isOnlyAnnounced, isRecap, points, refersTo } from "../order/points";
import { COOL_DOWN, WARM_UP, WARM_UP_OVER } from "../order/signals";
import { isMobile, statementsIn, type Indexed } from "../order/speech";

/** What speaks for a name being the turn to another exercise of the session. */

const NEAR = 8;
/** So many sentences after a name its figures may come. */
const REACH = 6;

/** What the whole speech tells once: where it warms up and cools down, where a circuit is announced. */
export interface Frame {
  readonly warm: number;
  readonly ready: number;
  readonly cool: number;
  readonly circuit: number;
}

export function frameOf({ said, statements }: Indexed): Frame {
  const last = (at: number): number => (at < 0 ? Infinity : at);
  const warm = last(said.findIndex((text) => WARM_UP.test(text)));
  return {
    warm,
    ready: last(said.findIndex((text, at) => at > warm && WARM_UP_OVER.test(text))),
    cool: last(said.findIndex((text, at) => at > said.length * 0.5 && COOL_DOWN.test(text))),
    circuit: statements.find(({ about }) => about === "circuit")?.sentence ?? Infinity,
  };
}

/** The names of all features of a candidate. */
export function featuresAt(speech: Indexed, frame: Frame, at: number): string[] {
  const { candidates, words, sentences, silences, teaches } = speech;
  const candidate = candidates[at] as Candidate;
  const { span, sentence, strength, passing, listed, paired, takenBack, isThing, sure, name } = candidate;
  const home = sentences[sentence];
  const word = (place: number): string => worded(words[place]?.plain ?? "|");
  const [b1, b2, b3, a1, a2, a3] = [word(span.from - 1), word(span.from - 2), word(span.from - 3), word(span.to), word(span.to + 1), word(span.to + 2)];
  const out = [
    "bias", `strength=${strength}`, `passing=${passing}`, `listed=${listed}`, `paired=${paired}`, `back=${takenBack}`, `thing=${isThing}`, `sure=${sure === 1}`, `known=${name.exercise !== null}`, `unlisted=${name.sound === ""}`, `everyday=${name.everyday}`, `mobile=${isMobile(candidate)}`, `length=${name.words.length}`,
    `-1=${b1}`, `-2=${b2}`, `-21=${b2} ${b1}`, `-321=${b3} ${b2} ${b1}`, `+1=${a1}`, `+2=${a2}`, `+12=${a1} ${a2}`, `+123=${a1} ${a2} ${a3}`, `-1+1=${b1} ${a1}`,
    `strength=${strength} passing=${passing} thing=${isThing}`,
  ];
  for (let away = 1; away <= NEAR; away += 1) {
    out.push(`b=${word(span.from - away)}`, `a=${word(span.to + away - 1)}`);
  }
  if (home) {
    const first = [0, 1, 2].map((offset) => word(home.from + offset));
    out.push(`s1=${first[0]}`, `s2=${first[0]} ${first[1]}`, `s3=${first.join(" ")}`, `in=${bucket(span.from - home.from, [0, 1, 2, 4, 7, 12])}`, `pause=${bucket(words[home.from]?.pause ?? 0, [0.2, 2, 8, 20])}`);
  }
  out.push(`silence-=${bucket(silences[sentence - 1] ?? 0, [0, 2, 8, 20])}`, `silence+=${bucket(Math.max(0, ...silences.slice(sentence, sentence + REACH)), [0, 2, 8, 20])}`, `where=${bucket(sentence / Math.max(1, sentences.length), [0.08, 0.15, 0.25, 0.5, 0.75, 0.85, 0.93])}`);
  const place = sentence > frame.cool ? "cool" : sentence > frame.ready ? "ready" : sentence > frame.warm ? "warm" : sentence === frame.warm ? "at warm" : "before";
  out.push(`zone=${place}`, `zone=${place} mobile=${isMobile(candidate)}`, `zone=${place} strength=${strength}`, `circuit=${sentence > frame.circuit}`);
  const next = candidates.findIndex((other, later) => later > at && other.isThing && !other.passing && other.name.title !== name.title);
  const until = Math.min(sentence + REACH, Math.max(sentence + 1, next < 0 ? Infinity : (candidates[next]?.sentence ?? 0)));
  const here = statementsIn(speech, sentence, sentence + 1);
  const after = here.filter(({ from }) => from >= span.to);
  for (const field of fieldsIn(after)) out.push(`has ${field}`);
  for (const field of fieldsIn(here.filter(({ from }) => from < span.from))) out.push(`had ${field}`);
  for (const field of fieldsIn(statementsIn(speech, sentence + 1, until))) out.push(`then ${field}`);
  for (const field of fieldsIn(statementsIn(speech, sentence, until))) out.push(`all ${field}`);
  out.push(`counted=${isCountedFrom(speech, at)}`, `figures=${bucket(statementsIn(speech, sentence, until).length, [0, 1, 2, 4, 8])}`, `teaches=${bucket(teaches.slice(sentence, until).filter(Boolean).length, [0, 1, 3])}`);
  const sum = points(speech, at, frame.circuit < sentence);
  out.push(`points=${bucket(sum, [-3, -1, 0, 1, 1.5, 2, 2.5, 3, 4, 5])}`, `enough=${sum >= ENOUGH}`, `announced=${isOnlyAnnounced(speech, at)}`);
  const [earlier, later] = [candidates.slice(0, at), candidates.slice(at + 1)];
  const before = earlier.filter((other) => other.name.title === name.title).length;
  const counted = later.some((other, offset) => other.name.title === name.title && isCountedFrom(speech, at + 1 + offset));
  out.push(`before=${bucket(before, [0, 1, 2])}`, `later=${bucket(later.filter((other) => other.name.title === name.title).length, [0, 1, 2])}`, `later counted=${counted}`, `before=${before > 0} strength=${strength}`, `refers=${earlier.some((other) => refersTo(candidate, other) && other.name.title !== name.title)}`, `recap=${isRecap(speech, at, earlier.filter(({ strength: lead }) => lead > 0))}`);
  const last = earlier.at(-1);
  const following = later[0];
  out.push(`last=${last ? `${last.name.title === name.title} ${bucket(span.from - last.span.to, [0, 2, 5, 15, 40])}` : "none"}`, `next=${following ? `${following.name.title === name.title} ${bucket(following.span.from - span.to, [0, 2, 5, 15, 40])}` : "none"}`);
  out.push(`near=${bucket(candidates.filter((other) => Math.abs(other.sentence - sentence) <= 1 && other.isThing).length, [1, 2, 3, 5])}`);
  return out;
}
