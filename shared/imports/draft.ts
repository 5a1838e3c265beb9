import { BLOCK_KIND_NAMES, emptyBlock, emptyEpisode, MAX_BLOCKS, MAX_LINES, newLine, type Block, type BlockKind, type Episode, type Line, type NewId } from "../episode";
import { lineKind } from "./lines/kind";
import { asSentence, piecesOf, saidIn } from "./lines/write";
import type { Part } from "./order/speech";
import type { SchemeRead } from "./schemes/compose";
import type { NotUnderstood, Span, Word } from "./types";

/** Spoken sentences that follow each other share a line up to this length, so that the sheet stays readable. */
const SAY_LENGTH = 320;

/** Everything that was made out of the words. */
export interface Understood {
  readonly words: readonly Word[];
  readonly sentences: readonly Span[];
  readonly said: readonly string[];
  readonly parts: readonly Part[];
  readonly schemes: ReadonlyMap<Part, SchemeRead>;
  /** Sentences in which sets, loads or rests are said. */
  readonly counted: ReadonlySet<number>;
  /** Hesitations and described sounds: in no line. */
  readonly skip: ReadonlySet<number>;
  readonly units: "kg" | "lb";
}

function linesOf(part: Part, all: Understood, newId: NewId): Line[] {
  const lines: Line[] = [];
  let open = "";
  const flush = (): void => {
    for (const piece of piecesOf(open)) lines.push(newLine(newId, "say", piece));
    open = "";
  };
  for (let number = part.from; number < part.to; number += 1) {
    const span = all.sentences[number] as Span;
    const text = saidIn(all.words, span, all.skip);
    if (text === "") continue;
    const kind = part.kind === "exercise" || part.kind === "warm-up" || part.kind === "cool-down"
      ? lineKind(all.said[number] ?? "", part.exercise?.family ?? "general", part.exercise?.name ?? (part.title || null), all.counted.has(number))
      : "say";
    if (kind === "say") {
      const sentence = asSentence(text, true);
      if (open !== "" && open.length + sentence.length + 1 > SAY_LENGTH) flush();
      open = open === "" ? sentence : `${open} ${sentence}`;
      continue;
    }
    flush();
    for (const piece of piecesOf(asSentence(text, false))) lines.push(newLine(newId, kind, piece));
  }
  flush();
  return lines;
}

const secondsOf = (part: Part, next: Part | undefined, { sentences, words }: Understood): number | null => {
  const at = (sentence: number | undefined): number | null => (sentence === undefined ? null : (words[sentences[sentence]?.from ?? -1]?.start ?? null));
  const start = at(part.from);
  const end = at(next?.from) ?? words[(sentences[part.to - 1]?.to ?? 0) - 1]?.end ?? null;
  return start === null || end === null || end <= start || end - start > 86_400 ? null : Math.round(end - start);
};

/** A block that has too many lines goes on in a block of talk after it. */
function withinLimits(block: Block, newId: NewId): Block[] {
  const blocks: Block[] = [{ ...block, lines: block.lines.slice(0, MAX_LINES) }];
  for (let at = MAX_LINES; at < block.lines.length; at += MAX_LINES) blocks.push(emptyBlock(newId, "talk", { title: "Talk", lines: block.lines.slice(at, at + MAX_LINES) }));
  return blocks;
}

/** The episode's parts as blocks, each with its part; blocks have ids of their own. */
export function blocksOf(all: Understood, newId: NewId): { readonly block: Block; readonly part: Part }[] {
  return all.parts.flatMap((part, at) => {
    const title = part.exercise?.name ?? (part.title === "" ? BLOCK_KIND_NAMES[part.kind] : part.title);
    const read = all.schemes.get(part);
    const next = all.parts.slice(at + 1).find(({ from, to }) => to > from);
    const block = emptyBlock(newId, part.kind, {
      title, exercise: part.exercise?.id ?? null,
      clipSeconds: part.to > part.from ? secondsOf(part, next, all) : null,
      sets: (read?.sets ?? []).slice(0, 40).map(({ role, text }) => ({ id: newId(), role, text })),
      lines: linesOf(part, all, newId),
    });
    return withinLimits(block, newId).map((each) => ({ block: each, part }));
  });
}

/** The parts a whole episode has and this one lacks. */
const EXPECTED: readonly BlockKind[] = ["opening", "warm-up", "exercise", "cool-down", "closing"];
export const missingFrom = (blocks: readonly Block[]): BlockKind[] => EXPECTED.filter((kind) => !blocks.some((block) => block.kind === kind));

/** The draft itself; blocks beyond what a file holds are given back as text. */
export function episodeOf(blocks: readonly Block[], title: string, units: "kg" | "lb", seconds: number | null, newId: NewId): { readonly episode: Episode; readonly over: readonly NotUnderstood[] } {
  const base = emptyEpisode(newId, { title });
  const over = blocks.slice(MAX_BLOCKS).map(({ title: name, sets, lines }): NotUnderstood => ({
    text: [name, ...sets.map(({ text }) => text), ...lines.map(({ text }) => text)].join(" "), reason: "too much", at: null, block: null,
    sentence: `An episode has at most ${MAX_BLOCKS} blocks; this is what stood after them.`,
  }));
  const target = seconds === null ? base.video.targetSeconds : Math.min(36_000, Math.max(10, Math.round(seconds)));
  return { episode: { ...base, session: { ...base.session, units }, video: { ...base.video, targetSeconds: target }, blocks: blocks.slice(0, MAX_BLOCKS) }, over };
}
