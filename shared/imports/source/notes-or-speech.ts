import { parseSetLine } from "../../training";

/** A line that only notes have: a label, a bullet, a number in front, a heading with a colon. */
const MARKED = /^\s*(?:(?:[-–*•#>▪●○◦►✓✔☐|]+|\d{1,2}[.)]|[a-f][1-9][.):]?)\s+\S|[-*•▪●]\p{L}|\p{Extended_Pictographic}|[a-z][a-z -]{1,14}:\s|\|)|:\s*$/iu;
/** Figures as they are written, and never as speech is written down: "3x8", "@ 60", "10/side", "r90", "30s", "RIR 2", "w/". */
const SHORTHAND = /\d\s?[x×]\s?\d|[x×]\s?\d+\b|\d\s?[x×]\b|@\s?\d|\d+(?:\.\d+)?\s?(?:kgs?|lbs?)\b|\d+\s?%|\d\s?\/\s?(?:side|leg|arm|\d)|\b(?:rir|rpe|amrap|emom|rdl|bss|ohp)\b|\br\d{2,3}\b|\b\d{1,3}\s?(?:s|secs?|mins?|m)\b|\bw\/|\b\d\d?[-–]\d\d?\b/i;
/** A line that stops in the middle of a sentence: its last word needs another. */
const RUNS_ON = /\b(?:a|an|the|and|or|but|so|to|of|in|on|at|for|with|from|by|your|you|we|i|my|our|is|are|was|it's|that|this|these|then|if|as|because|when|just|really|very|going|gonna|want|need|do|don't|keep|get|have|we're|you're|i'm|let's|three|four|two|one|into|than|like)$/i;
/** Words that speech is full of and notes hardly hold. */
const SPOKEN = /\b(?:okay|alright|gonna|wanna|um|uh|you know|i mean|we're|we'll|i'm|i'll|i've|you're going|let's|that's it|welcome back|everyone|guys|so now|and then|right so)\b/gi;
/** A line this long says one thing. */
const SHORT = 60;

const count = (lines: readonly string[], find: (line: string) => boolean): number => lines.filter(find).length;

/**
 * Notes are lines that each say one thing; speech is running text, wherever its lines end.
 *
 * Lines speak for notes by their marks and their shorthand, and for speech by their length, by ending in the middle of a sentence
 * and by the words that only people who talk use. What the most lines say counts.
 */
export function isNotes(text: string): boolean {
  const lines = text.split(/\r\n|\n|\r/).map((line) => line.trim()).filter((line) => line !== "");
  if (lines.length < 2) return lines.length === 1 && parseSetLine(lines[0] ?? "").ok;
  const telling = count(lines, (line) => MARKED.test(line) || (line.length <= 2 * SHORT && SHORTHAND.test(line)));
  const short = count(lines, (line) => line.length <= SHORT);
  const cut = count(lines, (line) => !MARKED.test(line) && RUNS_ON.test(line));
  const spoken = text.match(SPOKEN)?.length ?? 0;
  const words = text.split(/\s+/).length;
  const isSpeech = cut >= lines.length * 0.2 || (spoken >= 3 && spoken > words * 0.03) || short < lines.length * 0.4;
  if (isSpeech) return telling >= Math.max(2, lines.length * 0.5) && cut < lines.length * 0.2;
  const perLine = words / lines.length;
  return telling >= Math.max(2, lines.length * 0.25) || (telling >= 1 && short >= lines.length * 0.7 && perLine <= 6) || (lines.length <= 12 && short === lines.length && perLine <= 4.5);
}
