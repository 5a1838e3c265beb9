import { EPISODE_VERSION } from "./schema";

type Json = Record<string, unknown>;
const isObject = (value: unknown): value is Json => typeof value === "object" && value !== null && !Array.isArray(value);

/**
 * Version 1 held the video's length in minutes, one set line per block as plain text, no number of cameras and no quiet checks.
 * Version 2 counts seconds, keeps a list of set lines with a role, knows one or two cameras, and what a series leaves out.
 */
function from1(file: Json): Json {
  const video = isObject(file["video"]) ? file["video"] : {};
  const { targetMinutes, ...restOfVideo } = video;
  const session = isObject(file["session"]) ? file["session"] : {};
  const series = isObject(file["series"]) ? file["series"] : {};
  const blocks = Array.isArray(file["blocks"]) ? file["blocks"] : [];
  return {
    ...file,
    version: 2,
    series: { quiet: [], ...series },
    video: { ...restOfVideo, targetSeconds: typeof targetMinutes === "number" ? Math.round(targetMinutes * 60) : targetMinutes },
    session: { cameras: 1, alone: true, ...session },
    carryOver: file["carryOver"] ?? [],
    blocks: blocks.map((block: unknown) => {
      if (!isObject(block)) return block;
      const { sets, ...rest } = block;
      const text = typeof sets === "string" ? sets.trim() : "";
      return { actuals: [], ...rest, sets: text ? [{ id: `${String(block["id"])}-s1`, role: "working", text }] : [] };
    }),
  };
}

/** One step per version, from that version to the next. */
const STEPS: Readonly<Record<number, (file: Json) => Json>> = { 1: from1 };

/** A file of any known older version, carried forward to the newest shape (not yet validated). */
export function migrate(file: Json): Json {
  let current = file;
  for (let version = Number(current["version"]); version < EPISODE_VERSION; version++) {
    const step = STEPS[version];
    if (!step) break;
    current = step(current);
  }
  return current;
}
