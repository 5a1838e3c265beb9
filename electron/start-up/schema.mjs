import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { ROOT } from "./stamps.mjs";

/**
 * Writes shared/episode/episode.schema.json from the zod schema. Run it after a change of the schema:
 * node electron/start-up/schema.mjs. A unit test fails while the file is out of date.
 */
const esbuild = await import("esbuild");
const outfile = join(ROOT, ".cache", "episode-schema.mjs");
await esbuild.build({ entryPoints: [join(ROOT, "shared", "episode", "index.ts")], bundle: true, platform: "node", format: "esm", outfile, logLevel: "error" });
const { episodeJsonSchema } = await import(pathToFileURL(outfile).href);
const target = join(ROOT, "shared", "episode", "episode.schema.json");
writeFileSync(target, `${JSON.stringify(episodeJsonSchema(), null, 2)}\n`);
console.log(target);
