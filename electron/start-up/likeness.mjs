import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { bundled } from "./bundled.mjs";
import { ROOT } from "./stamps.mjs";

/**
 * Trains the likeness reader on its corpus and writes its weights. Run it after a change of the corpus, the thesaurus or
 * the patterns of the grammar reader: node electron/start-up/likeness.mjs. A unit test fails while the weights are out of date.
 */
const home = join(ROOT, "shared", "checks", "language", "likeness");
const { trainedOn } = await bundled("shared/checks/language/likeness/training.ts");
const corpus = join(home, "corpus");
const files = readdirSync(corpus).filter((name) => name.endsWith(".jsonl")).sort();
const lines = files.flatMap((name) => readFileSync(join(corpus, name), "utf8").trim().split("\n").map((row) => JSON.parse(row)));
const target = join(home, "weights.json");
writeFileSync(target, `${JSON.stringify(trainedOn(lines), null, 1)}\n`);
console.log(`${target}: trained on ${lines.length} lines of ${files.length} files`);
