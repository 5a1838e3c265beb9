import { open, stat } from "node:fs/promises";
import { basename, join } from "node:path";
import { blockName, idMaker, writeEpisode } from "../../shared/episode";
import { importBytes, MAX_IMPORT_BYTES, tooBig, type Imported } from "../../shared/imports";
import { writeAtomic } from "../workspace/atomic-write";
import { diskProblem } from "../workspace/sentences";
import { CommandFailed, type ExitCode, type Terminal } from "./terminal";
import { clockTime, count } from "./words";

export interface ImportFlags {
  readonly to?: string;
  readonly json?: boolean;
}

/** The bytes of the file to be read; its size is asked before a byte is read. */
async function bytesOf(path: string): Promise<Uint8Array> {
  try {
    const facts = await stat(path);
    if (!facts.isFile()) throw new CommandFailed(`"${path}" is not an ordinary file.`);
    if (facts.size > MAX_IMPORT_BYTES) throw new CommandFailed(`"${path}" was not read. ${tooBig(facts.size).message}`);
    const handle = await open(path, "r");
    try {
      return await handle.readFile();
    } finally {
      await handle.close();
    }
  } catch (error) {
    if (error instanceof CommandFailed) throw error;
    throw new CommandFailed(diskProblem(error, `"${path}" could not be read`).message);
  }
}

/** Where the draft goes: the file named, or a file named after the source in the folder named. */
async function targetOf(to: string, source: string): Promise<string> {
  const isFolder = await stat(to).then((facts) => facts.isDirectory(), () => false);
  return isFolder ? join(to, `${basename(source).replace(/\.[^.]*$/, "")}.episode.json`) : to;
}

/** What was understood and what was not, in sentences. */
export function describeImport({ episode, format, words, sentences, pace, missing, notUnderstood, problems }: Imported): string {
  const lines = [`Read ${count(words, "word")} of ${format === "webvtt" ? "WebVTT captions" : format === "subrip" ? "SubRip captions" : format} in ${count(sentences, format === "notes" ? "line" : "sentence")}.`];
  if (pace) lines.push(`Speaking pace: ${Math.round(pace.wordsPerMinute)} words a minute, ${pace.syllablesPerSecond.toFixed(2)} syllables a second, over ${clockTime(pace.speechSeconds)} of speech; ${clockTime(pace.silentSeconds)} of silence left out.`);
  lines.push("", "Understood");
  episode.blocks.forEach((block, at) => {
    lines.push(`  ${at + 1}. ${blockName(block)} (${block.kind}): ${count(block.lines.length, "line")}`);
    for (const set of block.sets) lines.push(`      ${set.role === "working" ? "sets" : set.role}: ${set.text}`);
    if (block.kind === "exercise" && block.sets.length === 0) lines.push("      no sets heard");
  });
  if (missing.length > 0) lines.push("", `Not found: ${missing.join(", ")}.`);
  if (notUnderstood.length > 0) {
    lines.push("", "Not understood, or only in part");
    for (const { text, sentence, at } of notUnderstood) lines.push(`  ${at === null ? "" : `${clockTime(at)} `}"${text}": ${sentence}`);
  }
  if (problems.length > 0) lines.push("", "In the file", ...problems.map(({ sentence }) => `  ${sentence}`));
  return `${lines.join("\n")}\n`;
}

/**
 * Captions, a transcript or notes as a draft. Without `--to` the draft goes to stdout and the report to stderr;
 * with it the path and the report go to stdout, as JSON with `--json`.
 */
export async function importFile(terminal: Terminal, path: string, { to, json }: ImportFlags): Promise<ExitCode> {
  const result = importBytes(await bytesOf(path), path, idMaker(Math.random));
  if (!result.ok) throw new CommandFailed(`"${path}" was not imported. ${result.message}`);
  const { episode, ...report } = result;
  const text = writeEpisode(episode);
  if (to === undefined) {
    if (json) await terminal.out(`${JSON.stringify({ ...report, episode }, null, 2)}\n`);
    else {
      await terminal.out(text);
      terminal.err(describeImport(result));
    }
    return 0;
  }
  const target = await targetOf(to, path);
  try {
    await writeAtomic(target, Buffer.from(text, "utf8"));
  } catch (error) {
    throw new CommandFailed(diskProblem(error, `"${target}" was not written`).message);
  }
  await terminal.out(json ? `${JSON.stringify({ file: target, ...report }, null, 2)}\n` : `${target}\n\n${describeImport(result)}`);
  return 0;
}
