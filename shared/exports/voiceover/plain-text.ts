import { episodeClocks } from "../../clocks";
import { episodeName, seriesName, type Episode } from "../../episode";
import { paceOf, type MeasuredSeconds, type Pace } from "../../speech";
import { beginsAfterEnd, scriptOf, textOf, type ScriptBlock, type ScriptRow } from "./script";
import { beginning, counted, fitOf, minutesSeconds, runsOver, wholeSeconds } from "./words";

/** Characters of a line, so that it fits a mail and a narrow window; and of the margin its times stand in. */
const WIDTH = 76;
const MARGIN = 14;

/** Text in lines of at most `width` characters, broken at spaces; a longer word stands alone. */
function wrapped(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/).filter(Boolean)) {
    if (line !== "" && Array.from(`${line} ${word}`).length > width) {
      lines.push(line);
      line = word;
    } else line = line === "" ? word : `${line} ${word}`;
  }
  return line === "" ? lines : [...lines, line];
}

const inMargin = (text: string): string[] => wrapped(text, WIDTH - MARGIN).map((line) => " ".repeat(MARGIN) + line);

function rowLines(row: ScriptRow): string[] {
  const time = `${beginning(row).padStart(7)} ${wholeSeconds(row.seconds).padStart(4)}`.padEnd(MARGIN);
  const last = row.segments.at(-1);
  const words = wrapped(`${textOf(row.segments)}${last?.breathAfter === "marked" && !row.endsLine ? " /" : ""}`, WIDTH - MARGIN);
  return [
    ...row.shots.flatMap((shot) => inMargin(`[${shot}]`)),
    ...words.map((line, at) => (at === 0 ? time : " ".repeat(MARGIN)) + line),
    ...(row.isMeasured ? inMargin("(measured)") : []),
    ...(runsOver(row) === "" ? [] : inMargin(`(${runsOver(row)})`)),
    ...(beginsAfterEnd(row) > 0 ? inMargin("(begins after the clip has ended)") : []),
    ...row.pronounced.flatMap(({ written, said }) => inMargin(`(${written}: ${said})`)),
  ];
}

function blockLines({ number, name, starts, clock, rows, restShots }: ScriptBlock): string[] {
  const { clip, words, verdict } = fitOf(clock);
  const fit = rows.length === 0 ? `${wholeSeconds(clock.seconds)} of picture, no words` : `${clip === null ? "" : `clip ${clip}, `}words ${words}: ${verdict}`;
  return [...wrapped(`${number}. ${name}`, WIDTH), `From ${minutesSeconds(starts)}, ${fit}.`, "", ...rows.flatMap((row) => [...rowLines(row), ...(row.endsLine ? [""] : [])]), ...restShots.flatMap((shot) => inMargin(`[${shot}]`)), ...(restShots.length > 0 ? [""] : [])];
}

/**
 * The script as plain text for any screen: running time and seconds in the margin, breaths as / , stars where the coach leans on a
 * word, shots in brackets, pronunciations in round ones, and that a sentence was timed by a take or runs over its clip. Line feeds, UTF-8.
 */
export function voiceoverText(episode: Episode, pace: Pace = paceOf(episode), measured?: MeasuredSeconds): string {
  const { screen } = episodeClocks(episode, pace, measured);
  const said = screen.blocks.reduce((sum, { spoken }) => sum + spoken.words, 0);
  const seconds = screen.blocks.reduce((sum, { spoken }) => sum + spoken.seconds, 0);
  const script = scriptOf(episode, pace, measured);
  const head = [...wrapped(episodeName(episode), WIDTH), ...wrapped(["Voiceover script", seriesName(episode)].filter(Boolean).join(", "), WIDTH), `Words ${minutesSeconds(seconds)} (${counted(said, "word")}), video ${minutesSeconds(screen.seconds)}, target ${minutesSeconds(screen.targetSeconds)}.`];
  const body = script.length === 0 ? ["This episode has no blocks yet, so there is nothing to say."] : script.flatMap((block) => ["", ...blockLines(block)]);
  return `${[...head, "", ...body].map((line) => line.trimEnd()).join("\n").replace(/\n{3,}/g, "\n\n").trimEnd()}\n`;
}
