import type { Block, Edit } from "../../episode";
import { speak } from "../speak";
import type { Pace } from "../types";
import { isOpposed } from "./opposites";
import { saySentences, sentencesOfLine, stemsOf, type SaySentence } from "./sentences";
import { withoutFillers, withoutTail } from "./shorten";
import type { CutReason, CutSuggestion } from "./types";

/** Share of the words of the shorter sentence that two must have in common to say the same. Common practice, no source. */
const SAME = 0.75;
/** Sentences with fewer words of meaning repeat each other by chance. */
const LEAST_STEMS = 3;
/** Bodies, movements and counts are always to the point. */
const TO_THE_POINT = stemsOf(
  `breathe breath exhale inhale hip hips knee knees heel heels foot feet toe toes shoulder shoulders elbow elbows wrist wrists hand hands grip back spine chest ribs neck
  chin head core belly glute glutes thigh leg legs arm arms weight bell bar dumbbell kettlebell floor bench pause slow slowly lower lift press pull push squeeze rest set sets rep reps
  repetition side left right kilos seconds minutes stand sit kneel walk step hold reach turn drive keep`,
);

/** A line's text with one sentence put otherwise, or taken out. Breath marks beside it stay in the line. */
function lineWith(text: string, sentence: SaySentence, becomes: string): string {
  const [before, after] = [text.slice(0, sentence.at).trimEnd(), text.slice(sentence.at + sentence.text.length).trimStart()];
  const joined = [before, becomes, after].filter((part) => part !== "").join(" ");
  return joined.replace(/(?<=^|\s)\/(?:\s+\/)+(?=\s|$)/g, "/").replace(/^\/\s+|\s+\/$|^\/$/g, "");
}

/** Puts a sentence otherwise; a line with nothing left goes. */
function editFor(block: Block, sentence: SaySentence, becomes: string): Edit[] {
  const { line } = sentence;
  const written = block.lines.find(({ id }) => id === line)?.text;
  if (written === undefined || sentence.at < 0) return [];
  const left = lineWith(written, sentence, becomes);
  return sentencesOfLine(left).length > 0 ? [{ type: "set-line", line, fields: { text: left } }] : [{ type: "remove-line", line }];
}

const quoted = (text: string): string => (text.length > 48 ? `${text.slice(0, 45).trimEnd()}…` : text);

/** The earlier sentence that says the same, if any. One that forbids or warns says something else. */
function saidBefore(sentence: SaySentence, earlier: readonly SaySentence[]): SaySentence | undefined {
  if (sentence.stems.size < LEAST_STEMS) return undefined;
  return earlier.find((other) => {
    if (other.stems.size < LEAST_STEMS || other.kept || isOpposed(sentence.text, other.text)) return false;
    const common = [...sentence.stems].filter((one) => other.stems.has(one)).length;
    return common / Math.min(sentence.stems.size, other.stems.size) >= SAME;
  });
}

/** The words of everything in the block that is not spoken: what the voiceover is about. */
const subjectOf = (block: Block): Set<string> =>
  new Set([...TO_THE_POINT, ...stemsOf([block.title, block.exercise ?? "", block.station, ...block.lines.filter(({ kind }) => kind !== "say").map(({ text }) => text)].join(" "))]);

/** Which blocks have a subject that a sentence can leave. */
const hasSubject = ({ kind, lines }: Block): boolean => (kind === "exercise" || kind === "warm-up" || kind === "cool-down") && lines.some((line) => line.kind === "cue" || line.kind === "avoid");

/**
 * Ways of saying less in a block, best first: what is said twice, words that say nothing, what is not about the exercise,
 * the longest stretch without a pause. What forbids, warns or discloses is never among them, nor is the only sentence.
 */
export function suggestCuts(block: Block, pace: Pace): CutSuggestion[] {
  const sentences = saySentences(block, pace);
  const subject = hasSubject(block) ? subjectOf(block) : null;
  const found: CutSuggestion[] = [];
  const propose = (sentence: SaySentence, reason: CutReason, becomes: string, why: string): void => {
    const left = becomes === "" ? { seconds: -pace.sentenceSeconds, words: 0 } : speak(becomes, pace);
    found.push({
      reason, line: sentence.line, sentence: sentence.text, becomes, why,
      savesSeconds: sentence.seconds - left.seconds, savesWords: sentence.words - left.words, edits: editFor(block, sentence, becomes),
    });
  };
  const proposed = new Set<SaySentence>();
  sentences.forEach((sentence, at) => {
    if (sentence.kept) return;
    const twin = saidBefore(sentence, sentences.slice(0, at));
    if (!twin) return;
    proposed.add(sentence);
    propose(sentence, "repeated", "", `Says again what "${quoted(twin.text)}" says.`);
  });
  for (const sentence of sentences) {
    const bare = withoutFillers(sentence.text);
    if (sentence.kept || proposed.has(sentence) || bare === sentence.text) continue;
    propose(sentence, "filler", bare, "Means the same without its padding.");
  }
  for (const sentence of sentences) {
    if (sentence.kept || proposed.has(sentence) || !subject || sentences.length < 2 || /\d/.test(sentence.text)) continue;
    if ([...sentence.stems].some((one) => subject.has(one))) continue;
    proposed.add(sentence);
    propose(sentence, "off cue", "", "Is not about this exercise: no cue, fault or part of the body in it.");
  }
  const longest = [...sentences].filter((one) => !one.kept && !proposed.has(one)).sort((a, b) => b.breathless - a.breathless)[0];
  if (longest && longest.words > 6) {
    const shorter = withoutTail(longest.text);
    const why = `The longest stretch without a pause, ${longest.breathless.toFixed(1)} s.`;
    if (shorter !== null) propose(longest, "longest without a pause", shorter, why);
    else found.push({ reason: "longest without a pause", line: longest.line, sentence: longest.text, becomes: longest.text, why: `${why} Say it in fewer words.`, savesSeconds: 0, savesWords: 0, edits: [] });
  }
  return found;
}
