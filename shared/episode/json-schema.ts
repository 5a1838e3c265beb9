import { z } from "zod";
import { EPISODE_VERSION, episodeSchema } from "./schema";

/** The JSON Schema (draft 2020-12) of an episode file, generated from the zod schema; published as episode.schema.json. */
export function episodeJsonSchema(): Record<string, unknown> {
  return { title: `Repwright episode, version ${EPISODE_VERSION}`, ...z.toJSONSchema(episodeSchema, { target: "draft-2020-12" }) };
}
