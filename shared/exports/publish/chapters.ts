import { blockName, type Episode } from "../../episode";
import type { ScreenClock } from "../../speech";

/** Least number of chapters, and least length of each, the last one to the end of the video included. */
export const FEWEST_CHAPTERS = 3;
export const SHORTEST_CHAPTER_SECONDS = 10;
/** Longer titles are cut off in most players. */
export const LONGEST_CHAPTER_TITLE = 50;

export interface Chapter {
  /** Whole seconds from the start of the video. */
  readonly at: number;
  readonly title: string;
}

/** A moment of the video as chapter lists write it: m:ss below an hour, h:mm:ss from one hour. Whole seconds. */
export function chapterTime(seconds: number): string {
  const two = (value: number): string => String(value).padStart(2, "0");
  const minutes = Math.floor(seconds / 60);
  return minutes < 60 ? `${minutes}:${two(seconds % 60)}` : `${Math.floor(minutes / 60)}:${two(minutes % 60)}:${two(seconds % 60)}`;
}

/**
 * The episode's chapters, one a block, in order; the first begins at 0:00.
 *
 * A block too short for a chapter of its own belongs to the one before it; too short at the start, it belongs to the next.
 * Blocks without screen time have no chapter. Starts are rounded to whole seconds.
 */
export function chaptersOf(episode: Pick<Episode, "blocks">, screen: ScreenClock): Chapter[] {
  const secondsOf = new Map(screen.blocks.map((block) => [block.block, block.seconds]));
  const chapters: Chapter[] = [];
  let start = 0;
  let pending: number | null = null;
  for (const block of episode.blocks) {
    const length = secondsOf.get(block.id) ?? 0;
    const at: number = pending ?? Math.round(start);
    start += length;
    const isLong: boolean = Math.round(start) - at >= SHORTEST_CHAPTER_SECONDS;
    if (isLong) chapters.push({ at, title: blockName(block) });
    pending = !isLong && chapters.length === 0 ? at : null;
  }
  return chapters;
}

/**
 * What keeps a chapter list from being shown, one sentence each; none when it holds.
 * @param videoSeconds - length of the whole video
 * @source Common rule of video platforms: begins at 0:00, at least three, ascending, each at least 10 seconds
 */
export function chapterProblems(chapters: readonly Chapter[], videoSeconds: number): string[] {
  const problems: string[] = [];
  if (chapters.length < FEWEST_CHAPTERS) {
    problems.push(`${chapters.length === 1 ? "One chapter" : `${chapters.length === 0 ? "No" : chapters.length} chapters`}, at least ${FEWEST_CHAPTERS} are needed: give more blocks ${SHORTEST_CHAPTER_SECONDS} seconds or more on screen.`);
  }
  const first = chapters[0];
  if (first && first.at !== 0) problems.push(`The first chapter begins at ${chapterTime(first.at)}, not at 0:00.`);
  chapters.forEach(({ at, title }, i) => {
    const length = (chapters[i + 1]?.at ?? videoSeconds) - at;
    if (length < 0) problems.push(`"${title}" at ${chapterTime(at)} comes after what follows it: chapters go forward in time.`);
    else if (length < SHORTEST_CHAPTER_SECONDS) problems.push(`"${title}" at ${chapterTime(at)} lasts ${Math.round(length)} s; a chapter needs ${SHORTEST_CHAPTER_SECONDS} s or more.`);
  });
  return problems;
}

/** Titles that most players cut off, in sentences. */
export function chapterNotes(chapters: readonly Chapter[]): string[] {
  return chapters
    .filter(({ title }) => title.length > LONGEST_CHAPTER_TITLE)
    .map(({ title }) => `"${title}" has ${title.length} characters; beyond ${LONGEST_CHAPTER_TITLE} it may be cut off.`);
}

/** The list as it goes into a description: one chapter a line, time then title. */
export function chapterText(chapters: readonly Chapter[]): string {
  return chapters.map(({ at, title }) => `${chapterTime(at)} ${title}`).join("\n");
}
