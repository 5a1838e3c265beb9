import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { bundled } from "./bundled.mjs";
import { ROOT } from "./stamps.mjs";

/**
 * Trains the readers of speech on their marked transcripts and writes their weights. Run it after a change of the transcripts,
 * of the names or of the phrases; a unit test fails while the weights are out of date.
 *
 *   node electron/start-up/speech-readers.mjs rows                     the models of rows: half an hour
 *   node electron/start-up/speech-readers.mjs listener VECTORS WORDS   the listener: some hours; its arguments are told in train.py
 */
const imports = join(ROOT, "shared", "imports");
const corpus = join(imports, "learning", "corpus");
const { transcriptsIn, lessonOf } = await bundled("shared/imports/learning/read.ts");
const files = readdirSync(corpus).filter((name) => name.endsWith(".txt")).sort().flatMap((name) => transcriptsIn(readFileSync(join(corpus, name), "utf8")));
const [what, vectors, words] = process.argv.slice(2);

if (what === "rows") {
  const { trainedOn } = await bundled("shared/imports/learning/training.ts");
  const target = join(imports, "learning", "weights.json");
  writeFileSync(target, `${JSON.stringify(trainedOn(files))}\n`);
  console.log(`${target}: trained on ${files.length} transcripts`);
} else if (what === "listener" && vectors && words) {
  const { digestOf } = await bundled("shared/imports/learning/training.ts");
  const { rowFor } = await bundled("shared/imports/listener/training.ts");
  const home = mkdtempSync(join(tmpdir(), "listener-"));
  const [rows, target] = [join(home, "rows.jsonl"), join(imports, "listener", "weights.json")];
  writeFileSync(rows, files.map((file) => JSON.stringify(rowFor(lessonOf(file)))).join("\n"));
  const { status } = spawnSync("python3", [join(imports, "listener", "train.py"), rows, vectors, words, target], { stdio: "inherit" });
  rmSync(home, { recursive: true });
  if (status === 0) writeFileSync(target, `${JSON.stringify({ digest: digestOf(files), ...JSON.parse(readFileSync(target, "utf8")) })}\n`);
  process.exitCode = status ?? 1;
} else {
  console.error("Say what to train: rows, or listener with its vectors and its list of words.");
  process.exitCode = 2;
}
