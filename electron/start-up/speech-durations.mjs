import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { bundled } from "./bundled.mjs";
import { ROOT } from "./stamps.mjs";
import { findSynthesiser } from "./synthesiser.mjs";
import { run } from "./run.mjs";

/**
 * Writes tests/trade/speech-durations.json: how long an open speech synthesiser takes for each passage of
 * tests/trade/speech-passages.ts, for the computers that have none. Run it after a change of the passages:
 * node electron/start-up/speech-durations.mjs.
 */
const synthesiser = findSynthesiser();
if (synthesiser === null) throw new Error("espeak-ng is needed to record durations, and there is none on this computer.");
const { PACE_SENTENCES, PASSAGES } = await bundled("tests/trade/speech-passages.ts");
const { VOICES, secondsHeard, spokenAloud } = await bundled("tests/trade/synthesiser.ts");
const texts = [...PACE_SENTENCES, ...PASSAGES.map(({ written, said = written }) => said)];
const version = (await run(synthesiser, ["--version"])).output.replace(/\s*Data at.*$/s, "").trim();
const seconds = Object.fromEntries(VOICES.map((voice) => [`${voice.voice} ${voice.rate}`, texts.map((text) => Math.round(secondsHeard(spokenAloud(text, voice)) * 100) / 100)]));
const target = join(ROOT, "tests", "trade", "speech-durations.json");
writeFileSync(target, `{\n "synthesiser": ${JSON.stringify(version)},\n "seconds": {\n${Object.entries(seconds).map(([key, list]) => `  ${JSON.stringify(key)}: ${JSON.stringify(list)}`).join(",\n")}\n }\n}\n`);
console.log(target);
