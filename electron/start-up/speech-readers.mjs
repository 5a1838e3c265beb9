import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { bundled } from "./bundled.mjs";
import { ROOT } from "./stamps.mjs";

/**
 * Trains the readers of speech on their marked transcripts and writes their weights. Run it after a change of the transcripts,
 * of the names or of the phrases: node electron/start-up/speech-readers.mjs. A unit test fails while the weights are out of date.
 */
const home = join(ROOT, "shared", "imports", "learning");
const { trainedOn, transcriptsIn } = await bundled("shared/imports/learning/training.ts");
const corpus = join(home, "corpus");
const files = readdirSync(corpus).filter((name) => name.endsWith(".txt")).sort().flatMap((name) => transcriptsIn(readFileSync(join(corpus, name), "utf8")));
const target = join(home, "weights.json");
writeFileSync(target, `${JSON.stringify(trainedOn(files))}\n`);
console.log(`${target}: trained on ${files.length} transcripts`);
