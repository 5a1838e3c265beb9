import { blockName, type Block, type Episode } from "../../shared/episode";
import { shotsOf } from "../../shared/filming";
import { paceOf, type Pace } from "../../shared/speech";
import { blockScreen, blockTimeline } from "../voiceover/timeline";
import { clock, seconds } from "../words/clock";

/** What is read in one breath, or for a clip without words what is seen meanwhile. Seconds from the script's start. */
export interface PromptStretch {
  /** Place among all stretches of the script. */
  readonly index: number;
  readonly text: string;
  readonly from: number;
  readonly to: number;
  readonly breath: "marked" | "sentence" | "suggested" | "line" | "silent";
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

/** What to do while a clip without words runs: wait, and for what is seen. */
function silentWords(block: Block, clip: number): string {
  const seen = shotsOf(block).map(({ shot }) => shot.subject).filter((subject) => subject !== "");
  const wait = `No words for ${clip >= 60 ? clock(clip) : `${seconds(clip)} s`}.`;
  return seen.length === 0 ? wait : `${wait} On screen: ${seen.join("; ")}.`;
}

/** What the prompter runs: each block as long as its clip or its words, whichever is longer. One without words still takes its clip, or what is read behind it would be ahead of the picture. */
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
    if (said.length === 0 && clip <= 0) return;
    const silent: PromptStretch = { index: 0, text: silentWords(block, clip), from: at, to: at + clip, breath: "silent" };
    const own = (said.length === 0 ? [silent] : said).map((stretch, n) => ({ ...stretch, index: stretches.length + n }));
    stretches.push(...own);
    const lastWord = Math.max(at + speechTo, ...said.map(({ to }) => to));
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
