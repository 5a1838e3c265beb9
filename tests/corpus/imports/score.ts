import { countingIds, type BlockKind, type SetRole } from "../../../shared/episode";
import { findExercise } from "../../../shared/exercises";
import { importText, type Imported } from "../../../shared/imports";
import { headOf } from "../../../shared/imports/learning/truth";
import { speak } from "../../../shared/speech";
import { parseSetLine, type Scheme } from "../../../shared/training";

/** The parts an episode may have or lack, as the head of a transcript names them. */
const PARTS = ["opening", "warm-up", "cool-down", "closing"] as const;

/** A set line that is true of an exercise. */
export interface TrueSet {
  readonly role: SetRole;
  readonly text: string;
}

/** A transcript of the corpus: what is true of it, and the words, with silences in braces ({12} is twelve seconds). */
export interface Transcript {
  /** Syllables a second. */
  readonly rate: number;
  readonly parts: Readonly<Record<string, string>>;
  /** Catalogue id, or a title in quotes for an exercise the catalogue lacks; no sets where none are said. */
  readonly exercises: readonly { readonly name: string; readonly sets: readonly TrueSet[] }[];
  readonly body: string;
}

/** "ramp 1 x 10 @ 20 kg; 3 x 5 @ 60 kg": set lines in their order; "-" is none. */
const setsOf = (text: string): TrueSet[] => (text === "-" ? [] : text.split(/\s*;\s*/)).map((line) => (line.startsWith("ramp ") ? { role: "ramp-up", text: line.slice(5) } : { role: "working", text: line }));

export function readTranscript(file: string): Transcript {
  const [, body = ""] = file.split(/\n---\n/);
  const rows = headOf(file);
  const isPart = (name: string): boolean => PARTS.some((part) => part === name);
  return {
    rate: Number(rows.find(([name]) => name === "rate")?.[1]),
    parts: Object.fromEntries(rows.filter(([name]) => isPart(name))),
    exercises: rows.filter(([name]) => !isPart(name) && name !== "rate").map(([name, sets]) => ({ name, sets: setsOf(sets) })),
    body,
  };
}

const stamp = (seconds: number): string => {
  const millis = Math.round(seconds * 1000);
  const two = (n: number, width = 2): string => String(n).padStart(width, "0");
  return `${two(Math.floor(millis / 3_600_000))}:${two(Math.floor(millis / 60_000) % 60)}:${two(Math.floor(millis / 1000) % 60)}.${two(millis % 1000, 3)}`;
};

/**
 * Captions as a machine would make them: two to four seconds each, lower case, no signs, cut anywhere between words.
 * Every word takes its syllables at the transcript's rate, give or take a fifth; silences stand where the transcript has them.
 * @returns the file, and the true words a minute of speech, silences of a second and more left out
 */
export function captionsOf({ rate, body }: Transcript): { readonly vtt: string; readonly wordsPerMinute: number } {
  let at = 0.7;
  let [spoken, count] = [0, 0];
  const cues: { start: number; end: number; words: string[] }[] = [];
  let open: { start: number; end: number; words: string[] } | null = null;
  let wobble = 7;
  const close = (): void => {
    if (open) cues.push(open);
    open = null;
  };
  for (const piece of body.split(/\s+/).filter((part) => part !== "")) {
    const silence = /^\{([\d.]+)\}$/.exec(piece);
    if (silence) {
      const seconds = Number(silence[1]);
      if (seconds >= 0.5) close();
      if (seconds < 1) spoken += seconds;
      at += seconds;
      continue;
    }
    wobble = (wobble * 48271) % 2147483647;
    const seconds = (Math.max(1, speak(piece).syllables) / rate) * (0.8 + (wobble % 1000) / 2500);
    open ??= { start: at, end: at, words: [] };
    open.words.push(piece);
    at += seconds;
    open.end = at;
    spoken += seconds;
    count += 1;
    if (open.end - open.start >= 2 + (wobble % 7) / 4) close();
  }
  close();
  const vtt = `WEBVTT\n\n${cues.map(({ start, end, words }) => `${stamp(start)} --> ${stamp(end)}\n${words.join(" ")}\n`).join("\n")}`;
  return { vtt, wordsPerMinute: (count / spoken) * 60 };
}

/** Every word of the source that is neither in the draft nor in what was listed. */
export function lostWords(source: string, { episode, notUnderstood }: Imported): string[] {
  const wordsIn = (text: string): string[] => text.toLowerCase().match(/[\p{L}\p{N}][\p{L}\p{N}'.,:-]*/gu)?.map((word) => word.replace(/[.,:]+$/, "")) ?? [];
  const kept = new Map<string, number>();
  const held = [episode.title, ...episode.blocks.flatMap(({ title, sets, lines, alternates }) => [title, ...sets.map(({ text }) => text), ...lines.map(({ text }) => text), ...alternates.map(({ text }) => text)]), ...notUnderstood.filter(({ reason }) => reason !== "scheme" && reason !== "range" && reason !== "no name").map(({ text }) => text)];
  for (const word of held.flatMap(wordsIn)) kept.set(word, (kept.get(word) ?? 0) + 1);
  return wordsIn(source).filter((word) => {
    const left = kept.get(word) ?? 0;
    kept.set(word, left - 1);
    return left <= 0;
  });
}

export interface Score {
  readonly found: readonly string[];
  readonly wanted: readonly string[];
  readonly orderRight: boolean;
  /** Exercises for which sets are said, and those with every set right: its role, its figures, its place. */
  readonly schemes: number;
  readonly schemesRight: number;
  /** The same, line by line. */
  readonly lines: number;
  readonly linesRight: number;
  readonly wrong: readonly string[];
  readonly paceError: number;
  readonly partsRight: boolean;
  readonly lost: readonly string[];
  readonly words: number;
}

/** A scheme by its fields, whichever order they came in; bodyweight and no weight are the same set. */
const fieldsOf = (scheme: Partial<Scheme>): string => JSON.stringify(Object.entries(scheme).filter(([field]) => field !== "load" || scheme.load?.unit !== "bodyweight").sort(([a], [b]) => (a < b ? -1 : 1)));

const canonical = ({ role, text }: TrueSet): string => {
  const read = parseSetLine(text);
  return `${role} ${read.ok ? fieldsOf(read.scheme) : text}`;
};

/** Set by set, so that "8/7/6" is the same as a line for each, and "2 x 10" as two lines. */
function oneByOne(sets: readonly TrueSet[]): string[] {
  return sets.flatMap(({ role, text }) => {
    const read = parseSetLine(text);
    if (!read.ok) return [`${role} ${text}`];
    const { sets: count = 1, reps, ...set } = read.scheme;
    const each: Partial<Scheme>[] = reps ? reps.map((one) => ({ ...set, repsMin: one, repsMax: one })) : Array.from({ length: count }, () => set);
    return each.map((scheme) => `${role} ${fieldsOf(scheme)}`);
  });
}

const shown = (sets: readonly TrueSet[]): string => sets.map(({ role, text }) => (role === "ramp-up" ? `ramp ${text}` : text)).join("; ") || "nothing";

/** A title in quotes, whichever way its hyphens and its plural are written; an id as it is. */
function named(exercise: string): string {
  if (!exercise.startsWith('"')) return exercise;
  return findExercise(exercise.slice(1, -1))?.id ?? exercise.toLowerCase().replace(/-/g, " ").replace(/s"$/, '"');
}

/**
 * The block of each exercise wanted: the one of its name, else, between blocks that are certain, the one that stands in its
 * place under another name. -1 where there is none.
 */
export function aligned(wanted: readonly string[], found: readonly string[]): number[] {
  const places = wanted.map((name) => found.indexOf(name));
  let floor = -1;
  places.forEach((place, at) => {
    if (place >= 0) {
      floor = Math.max(floor, place);
      return;
    }
    const until = places.slice(at + 1).find((later) => later > floor) ?? found.length;
    const free = floor + 1 < until && !places.includes(floor + 1) ? floor + 1 : -1;
    places[at] = free;
    if (free >= 0) floor = free;
  });
  return places;
}

/** Imports the transcript as captions and holds the draft against the truth. */
export function scoreTranscript(file: string, name: string): Score {
  const truth = readTranscript(file);
  const { vtt, wordsPerMinute } = captionsOf(truth);
  const result = importText(vtt, name, countingIds("i-"));
  if (!result.ok) throw new Error(`${name}: ${result.message}`);
  const blocks = result.episode.blocks.filter(({ kind }) => kind === "exercise");
  const found = blocks.map(({ exercise, title }) => exercise ?? named(`"${title}"`));
  const wanted = truth.exercises.map(({ name: exercise }) => named(exercise));
  const counted = truth.exercises.filter(({ sets }) => sets.length > 0);
  const wrong: string[] = [];
  let linesRight = 0;
  const places = aligned(wanted, found);
  for (const { name: exercise, sets } of counted) {
    const heard = blocks[places[wanted.indexOf(named(exercise))] ?? -1]?.sets ?? [];
    const [is, should] = [heard.map(canonical), sets.map(canonical)];
    linesRight += should.filter((line) => is.includes(line)).length;
    if (oneByOne(heard).join() !== oneByOne(sets).join()) wrong.push(`${exercise}: wanted ${shown(sets)}, got ${shown(heard)}`);
  }
  const has = (kind: BlockKind): boolean => result.episode.blocks.some((block) => block.kind === kind);
  const partsRight = PARTS.every((kind) => truth.parts[kind] === undefined || (truth.parts[kind] === "yes") === has(kind));
  return {
    found, wanted, orderRight: found.join() === wanted.join(), schemes: counted.length, schemesRight: counted.length - wrong.length,
    lines: counted.reduce((sum, { sets }) => sum + sets.length, 0), linesRight, wrong,
    paceError: Math.abs((result.pace?.wordsPerMinute ?? 0) - wordsPerMinute) / wordsPerMinute, partsRight, lost: lostWords(truth.body.replace(/\{[\d.]+\}/g, ""), result), words: result.words,
  };
}
