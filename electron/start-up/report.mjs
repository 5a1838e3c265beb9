import { performance } from "node:perf_hooks";

/** A step that could not be done; its message is one sentence for people, `output` what a tool printed. */
export class StepFailed extends Error {
  constructor(message, output = "") {
    super(message);
    this.output = output;
  }
}

const seconds = (ms) => (ms < 10_000 ? `${(ms / 1000).toFixed(1)} s` : `${Math.round(ms / 1000)} s`);

/**
 * Runs one step and prints one line for it: name, what it did, how long it took.
 * `work` returns the words for the line. A failure is printed in full and thrown on.
 */
export async function step(name, work) {
  const from = performance.now();
  try {
    const done = await work();
    console.log(`${name}: ${done} (${seconds(performance.now() - from)})`);
  } catch (error) {
    if (error instanceof StepFailed && error.output.trim() !== "") console.log(error.output.trimEnd());
    console.log(`${name}: FAILED, ${error instanceof Error ? error.message : String(error)} (${seconds(performance.now() - from)})`);
    throw error;
  }
}
