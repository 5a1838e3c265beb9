import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { bundled } from "./bundled.mjs";
import { ROOT } from "./stamps.mjs";

/**
 * Writes shared/episode/episode.schema.json from the zod schema. Run it after a change of the schema:
 * node electron/start-up/schema.mjs. A unit test fails while the file is out of date.
 */
const { episodeJsonSchema } = await bundled("shared/episode/index.ts");
const target = join(ROOT, "shared", "episode", "episode.schema.json");
writeFileSync(target, `${JSON.stringify(episodeJsonSchema(), null, 2)}\n`);
console.log(target);
