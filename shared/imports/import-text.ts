import type { NewId } from "../episode";
import { decodeText } from "../speech";
import { blocksOf, episodeOf, missingFrom, type Understood } from "./draft";
import { cutInto, prepared, speechOf, type Prepared } from "./heard";
import { draftOfNotes } from "./import-notes";
import { trainedModels } from "./learning/models";
import { listenTo } from "./listener/listen";
import type { Mention } from "./names/find";
import { runningOrder } from "./order/order";
import { sentenceAt, type Part } from "./order/speech";
import { measurePace } from "./pace";
import { tokensOf } from "./schemes/figures";
import { readSchemes, type PlacedStatement } from "./schemes/read-schemes";
import { unitOf } from "./schemes/unit";
import { hesitationsIn } from "./sentences/hesitations";
import { cutAt, splitBefore } from "./sentences/split-at-names";
import { MAX_IMPORT_BYTES, readSource, tooBig, type Source } from "./source/read-source";
import { soundsIn } from "./source/sounds";
import { textIn } from "./source/words";
import type { Imported, ImportResult, NotUnderstood, Span, Word } from "./types";

/** "ep 12 - legs.en.vtt" as a title: "Ep 12 - legs". */
export function titleFrom(file: string): string {
  const stem = file.replace(/^.*[/\\]/, "").replace(/\.[a-z0-9]{1,5}$/i, "").replace(/\.[a-z]{2}(?:-[A-Za-z]+)?$/, "").replace(/[_\s\u0000-\u001f\u007f]+/g, " ").trim();
  return (stem.charAt(0).toUpperCase() + stem.slice(1)).slice(0, 200);
}

/** Fewer than this before a name is an order, and no number of reps: "number two, push-ups". */
const FEWEST_REPS = 4;
const NO_COUNT = /^(?:number|exercise|station|block|movement|round|set|sets|of|week|day|episode|for|by|times)$/;

/** "Ten push-ups": a number right before a name counts reps, where nothing else is said of them. */
function countedNames(words: readonly Word[], sentences: readonly Span[], mentions: readonly Mention[], skip: ReadonlySet<number>): PlacedStatement[] {
  return mentions.flatMap(({ from, to, isThing }): PlacedStatement[] => {
    const tokens = isThing ? tokensOf(words, Math.max(0, from - 4), from, skip, new Set()) : [];
    const count = tokens.at(-1);
    const value = count?.value ?? 0;
    if (!count || !Number.isInteger(value) || value < FEWEST_REPS || value > 100 || NO_COUNT.test(tokens.at(-2)?.text ?? "")) return [];
    return [{ says: { repsMin: value, repsMax: value }, rank: "part", about: "working", either: false, remark: null, from: count.at, to: to - 1, sentence: sentenceAt({ sentences }, count.at) }];
  });
}

type OnProgress = (share: number) => void;

/** Shares of the work: what comes before speech is listened to, and the listening. Measured on transcripts. */
const [BEFORE_LISTENING, LISTENING] = [0.1, 0.8];

/** The parts found in sentences, and what they were found by. */
interface Ordered {
  readonly sentences: readonly Span[];
  readonly said: readonly string[];
  readonly statements: readonly PlacedStatement[];
  readonly phrases: readonly PlacedStatement[];
  readonly parts: readonly Part[];
}

function understandSpeech(words: readonly Word[], skip: ReadonlySet<number>, onProgress: OnProgress): Understood {
  const models = trainedModels();
  const ready = prepared(words, skip);
  const { mentions } = ready;
  onProgress(BEFORE_LISTENING);
  const listened = listenTo(ready, models.listener, (share) => onProgress(BEFORE_LISTENING + LISTENING * share));
  const inOrder = (from: Prepared): Ordered => {
    const speech = speechOf(from, listened, models);
    return { ...speech, parts: runningOrder(speech) };
  };
  let read = inOrder(ready);
  // Two parts that begin in one sentence: it is cut, and everything is read once more.
  const torn = read.parts.flatMap(({ from, named }) => (named !== null && named < (read.sentences[from]?.from ?? words.length) ? [named] : []));
  const turned = read.parts.flatMap(({ begins, pair }) => (begins !== null && pair === null ? [begins.turn] : []));
  const cut = cutAt(torn.length > 0 ? splitBefore(words, read.sentences, torn) : read.sentences, turned);
  if (cut.length > read.sentences.length) read = inOrder(cutInto(ready, cut));
  const { sentences, said, statements, phrases, parts } = read;
  return { words, sentences, said, parts, schemes: readSchemes(parts, [...statements, ...countedNames(words, sentences, mentions, skip).filter(({ from }) => !statements.some((other) => other.from === from))].sort((a, b) => a.from - b.from), phrases, mentions, words, listened, models), counted: new Set(statements.map(({ sentence }) => sentence)), skip, units: unitOf(statements, words) };
}

const grouped = (words: readonly Word[], places: ReadonlySet<number>, reason: NotUnderstood["reason"], sentence: string): NotUnderstood[] => {
  const texts = [...places].sort((a, b) => a - b).map((at) => words[at]?.text ?? "");
  return texts.length === 0 ? [] : [{ text: texts.join(" "), reason, sentence, at: null, block: null }];
};

/** What was said about sets and could not become a set line, or only by a choice. */
function schemeRemarks(all: Understood, placed: ReturnType<typeof blocksOf>): NotUnderstood[] {
  return placed.flatMap(({ block, part }) => (all.schemes.get(part)?.remarks ?? []).map(({ statement, why, isOpen }): NotUnderstood => ({
    text: textIn(all.words, statement.from, statement.to + 1),
    reason: isOpen ? "scheme" : "range", sentence: why, at: all.words[statement.from]?.start ?? null, block: block.id,
  })));
}

/** So many words tell where an exercise without a name begins. */
const FIRST_WORDS = 12;

/** Exercises that stand in the draft without a name; one that fills several blocks is told once. */
function namelessRemarks({ words }: Understood, placed: ReturnType<typeof blocksOf>): NotUnderstood[] {
  return placed.flatMap(({ block, part }, at): NotUnderstood[] => {
    if (part.begins === null || part.said !== "" || placed[at - 1]?.part === part) return [];
    const { turn } = part.begins;
    return [{ text: textIn(words, turn, turn + FIRST_WORDS), reason: "no name", sentence: "An exercise begins here, and nothing that is said names it. Choose which one it is.", at: words[turn]?.start ?? null, block: block.id }];
  });
}

function lastSecond(words: readonly Word[]): number | null {
  return words.reduce<number | null>((last, { end }) => (end === null ? last : Math.max(last ?? 0, end)), null);
}

function imported(source: Source, title: string, newId: NewId, onProgress: OnProgress): Imported {
  const { words } = source;
  if (source.format === "notes") return draftOfNotes(source, title, newId);
  const sounds = soundsIn(words);
  const hesitations = hesitationsIn(words);
  const listed = [
    ...source.asides,
    ...grouped(words, sounds, "sound", "Sounds, described in the captions."),
    ...grouped(words, hesitations, "hesitation", "Hesitations, left out of the lines."),
  ];
  const all = understandSpeech(words, new Set([...sounds, ...hesitations]), onProgress);
  const placed = blocksOf(all, newId);
  const { episode, over } = episodeOf(placed.map(({ block }) => block), title, all.units, lastSecond(words), newId);
  return {
    ok: true, episode, format: source.format, words: words.length, sentences: all.sentences.length,
    pace: measurePace(words, all.sentences),
    missing: missingFrom(episode.blocks), notUnderstood: [...namelessRemarks(all, placed), ...schemeRemarks(all, placed), ...listed, ...over], problems: source.problems,
  };
}

/**
 * Captions (WebVTT, SubRip, lines with times), a transcript or notes, as the draft of an episode.
 *
 * Nothing is dropped: every word of the source stands in the draft or in `notUnderstood`. Times, tags and layout are no words.
 * Known limits: English; one speaker.
 * @param text - decoded
 * @param file - its name, for the title; empty for pasted text
 * @param onProgress - is told the share of the work that is done, now and then
 */
export function importText(text: string, file: string, newId: NewId, onProgress: OnProgress = () => undefined): ImportResult {
  const source = readSource(text);
  return source.ok ? imported(source, titleFrom(file), newId, onProgress) : source;
}

/** The same for the bytes of a file, whatever their encoding. */
export function importBytes(bytes: Uint8Array, file: string, newId: NewId, onProgress?: OnProgress): ImportResult {
  if (bytes.length > MAX_IMPORT_BYTES) return tooBig(bytes.length);
  const { text, problems } = decodeText(bytes);
  const result = importText(text, file, newId, onProgress);
  return result.ok ? { ...result, problems: [...problems, ...result.problems] } : result;
}
