#!/usr/bin/env node
import { once } from "node:events";
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { run } from "./cli/program";
import type { Terminal } from "./cli/terminal";
import { diskProblem, errorCode } from "./workspace/sentences";

/** `repwright` on the command line: the real terminal around `run`. Bundled to dist/electron/cli.mjs. */
const terminal: Terminal = {
  stdin: process.stdin,
  out: async (text) => {
    if (!process.stdout.write(text)) await once(process.stdout, "drain");
  },
  err: (text) => void process.stderr.write(text),
  now: () => new Date(),
  dist: dirname(dirname(fileURLToPath(import.meta.url))),
  ended: () => Promise.race([once(process, "SIGINT"), once(process, "SIGTERM")]).then(() => undefined),
};

process.stdout.on("error", (error) => {
  // `repwright ... | head` closes the pipe early: that is the reader's right, not a failure.
  if (errorCode(error) === "EPIPE") process.exit(0);
  process.stderr.write(`${diskProblem(error, "The output was not written").message}\n`);
  process.exit(2);
});

run(process.argv.slice(2), terminal).then(
  (code) => (process.exitCode = code),
  (error: unknown) => {
    process.stderr.write(`Repwright itself failed: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`);
    process.exitCode = 2;
  },
);
