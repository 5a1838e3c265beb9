import type { NewId } from "./ids";
import { EPISODE_FORMAT, EPISODE_VERSION, type Block, type BlockKind, type Episode, type Line, type LineKind } from "./schema";

/** A block with nothing in it yet; `fields` overrides any part. */
export function emptyBlock(newId: NewId, kind: BlockKind, fields: Partial<Block> = {}): Block {
  return {
    id: newId(), kind, title: "", exercise: null, station: "", minutes: null, clipSeconds: null,
    sets: [], lines: [], alternates: [], actuals: [], ...fields,
  };
}

/** A line of one kind. */
export function newLine(newId: NewId, kind: LineKind, text: string): Line {
  return { id: newId(), kind, text };
}

/** An empty page: no blocks, a 60-minute slot, a ten-minute video, kilograms. */
export function emptyEpisode(newId: NewId, fields: Partial<Episode> = {}): Episode {
  return {
    format: EPISODE_FORMAT,
    version: EPISODE_VERSION,
    id: newId(),
    title: "",
    series: { name: "", number: null, coach: "", quiet: [] },
    audience: { level: "beginner", groups: [] },
    session: { place: "", date: null, time: null, slotMinutes: 60, kit: [], units: "kg", alone: true, cameras: 1 },
    video: { targetSeconds: 600, frameRate: "30", aspect: "16:9" },
    publish: null,
    partners: [],
    blocks: [],
    carryOver: [],
    waivers: [],
    ...fields,
  };
}
