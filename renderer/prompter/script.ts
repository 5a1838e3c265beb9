import { blockName, type Episode } from "../../shared/episode";
import { paceOf, type Pace } from "../../shared/speech";
import { blockScreen, blockTimeline } from "../voiceover/timeline";

/** What is read in one breath. Seconds from the script's start. */
export interface PromptStretch {
  /** Place among all stretches of the script. */
  readonly index: number;
  readonly text: string;
  readonly from: number;
  readonly to: number;
  readonly breath: "marked" | "sentence" | "suggested" | "line";
}

export interface PromptBlock {
  readonly id: string;
  /** As people count the running order. */
  readonly number: number;
  readonly name: string;
  /** When it begins in the script, and when the next one may; seconds. */
  readonly from: number;
  readonly to: number;
  /** When its last word is said; seconds from the script's start. */
  readonly speechTo: number;
  /** Length of its clip; seconds. */
  readonly clip: number;
  readonly stretches: readonly PromptStretch[];
}

export interface PromptScript {
  readonly blocks: readonly PromptBlock[];
  readonly stretches: readonly PromptStretch[];
  readonly seconds: number;
}

/** What the prompter runs: the blocks with words, each as long as its clip or its words, whichever is longer. */
export function promptScript(episode: Episode, own: Pace): PromptScript {
  const pace = paceOf(episode, own);
  const blocks: PromptBlock[] = [];
  const stretches: PromptStretch[] = [];
  let at = 0;
  episode.blocks.forEach((block, i) => {
    const clip = blockScreen(block, pace).seconds;
    const { lines, speechTo } = blockTimeline(block, pace, clip);
    const said = lines.flatMap(({ placed, from }): PromptStretch[] =>
      placed.stretches.map((stretch, n) => ({
        index: stretches.length,
        text: placed.words.slice(stretch.firstWord, stretch.endWord).map(({ text }) => text).join(" "),
        from: at + from + stretch.from,
        to: at + from + stretch.to,
        breath: placed.breaths[n]?.why ?? "line",
      })));
    if (said.length === 0) return;
    const own = said.map((stretch, n) => ({ ...stretch, index: stretches.length + n }));
    stretches.push(...own);
    const lastWord = Math.max(at + speechTo, ...own.map(({ to }) => to));
    const to = Math.max(at + clip, lastWord);
    blocks.push({ id: block.id, number: i + 1, name: blockName(block), from: at, to, speechTo: lastWord, clip, stretches: own });
    at = to;
  });
  return { blocks, stretches, seconds: at };
}

/** The block that runs at a moment; the last one at the end. */
export function blockAt(script: PromptScript, at: number): PromptBlock | null {
  return script.blocks.find((block) => at < block.to) ?? script.blocks.at(-1) ?? null;
}

/** The stretch that is read at a moment, or comes up next in the pause before it; the last one at the end. */
export function stretchAt(script: PromptScript, at: number): PromptStretch | null {
  return script.stretches.find(({ to }) => at < to) ?? script.stretches.at(-1) ?? null;
}
