import type { z } from "zod";
import { migrate } from "./migrate";
import { EPISODE_FORMAT, EPISODE_VERSION, MAX_BLOCKS, episodeSchema, type Episode } from "./schema";

/** Largest file read, in bytes. A 60-block episode is under 0.2 MB. */
export const MAX_FILE_BYTES = 8 * 1024 * 1024;

export type ReadResult =
  | { ok: true; episode: Episode; migratedFrom: number | null }
  | { ok: false; code: "empty" | "too-big" | "not-json" | "not-an-episode" | "newer-version" | "bad-value"; message: string };

const refuse = (code: Extract<ReadResult, { ok: false }>["code"], message: string): ReadResult => ({ ok: false, code, message });

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null && !Array.isArray(value);

/** Line and column, from 1, of an offset in a text. */
function placeOf(source: string, offset: number): string {
  const before = source.slice(0, offset);
  const line = before.split("\n").length;
  return `line ${line}, column ${offset - before.lastIndexOf("\n")}`;
}

/** Is the text the beginning of some JSON, as far as it goes? Engines word an early end in several ways. */
function isBeginning(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch (error) {
    const message = error instanceof Error ? error.message : "";
    const at = /position (\d+)/.exec(message);
    return /end of (?:JSON|data)|unterminated/i.test(message) || (at !== null && Number(at[1]) >= text.length);
  }
}

/** Where the text stops being JSON. Not every engine names a place, so the longest beginning that still is JSON is searched for. */
function jsonPlace(source: string): string {
  let [good, bad] = [0, source.length + 1];
  while (bad - good > 1) {
    const middle = Math.floor((good + bad) / 2);
    if (isBeginning(source.slice(0, middle))) good = middle;
    else bad = middle;
  }
  return placeOf(source, good);
}

const path = (parts: readonly PropertyKey[]): string =>
  parts.map((part, i) => (typeof part === "number" ? `[${part}]` : `${i === 0 ? "" : "."}${String(part)}`)).join("") || "the top";

/** The first thing wrong, in one sentence: where, what was expected. */
function firstIssue(error: z.ZodError): string {
  const issue = error.issues[0];
  if (!issue) return "The file does not have the shape of an episode.";
  const more = error.issues.length > 1 ? ` (and ${error.issues.length - 1} more places)` : "";
  const found = issue.message.replace(/^Invalid input: /, "");
  return `At ${path(issue.path)}: ${found.charAt(0).toLowerCase()}${found.slice(1)}${more}.`;
}

/** Ids must be unique within the file: findings, waivers and edits point by them. */
function duplicateId(episode: Episode): string | null {
  const seen = new Set<string>();
  for (const block of episode.blocks) {
    for (const item of [block, ...block.sets, ...block.lines, ...block.alternates]) {
      if (seen.has(item.id)) return item.id;
      seen.add(item.id);
    }
  }
  return null;
}

/**
 * Reads the text of an episode file: JSON, then format and version, then migration, then every value.
 * Never throws: what is wrong comes back as a sentence with the place. Unknown keys are refused, so that
 * nothing a newer program wrote is silently lost on the next save.
 */
export function readEpisode(source: string): ReadResult {
  if (source.length > MAX_FILE_BYTES) {
    return refuse("too-big", `The file is ${Math.round(source.length / 1024 / 1024)} MB; an episode is at most ${MAX_FILE_BYTES / 1024 / 1024} MB.`);
  }
  const body = source.charCodeAt(0) === 0xfeff ? source.slice(1) : source;
  if (body.trim() === "") return refuse("empty", "The file is empty.");
  let json: unknown;
  try {
    json = JSON.parse(body);
  } catch {
    return refuse("not-json", `The file is not readable JSON: it breaks at ${jsonPlace(body)}.`);
  }
  if (!isObject(json) || json["format"] !== EPISODE_FORMAT) {
    return refuse("not-an-episode", `This is JSON but not an episode: "format" should be "${EPISODE_FORMAT}" at the top.`);
  }
  const version = json["version"];
  if (typeof version !== "number" || !Number.isInteger(version) || version < 1) {
    return refuse("bad-value", `At version: expected a whole number from 1 to ${EPISODE_VERSION}.`);
  }
  if (version > EPISODE_VERSION) {
    return refuse("newer-version", `The file has version ${version}; this program reads up to ${EPISODE_VERSION}. Open it with a newer Repwright.`);
  }
  if (Array.isArray(json["blocks"]) && json["blocks"].length > MAX_BLOCKS) {
    return refuse("bad-value", `At blocks: ${json["blocks"].length} blocks, at most ${MAX_BLOCKS} are read.`);
  }
  const parsed = episodeSchema.safeParse(migrate(json));
  if (!parsed.success) return refuse("bad-value", firstIssue(parsed.error));
  const twice = duplicateId(parsed.data);
  if (twice !== null) return refuse("bad-value", `At blocks: the id "${twice}" is used twice; every block and line needs its own.`);
  return { ok: true, episode: parsed.data, migratedFrom: version < EPISODE_VERSION ? version : null };
}

/** The file text of an episode: two-space JSON, keys in schema order, a final line break. */
export function writeEpisode(episode: Episode): string {
  return `${JSON.stringify(episodeSchema.parse(episode), null, 2)}\n`;
}
