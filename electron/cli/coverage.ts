import { coverageWarnings, planCoverage, readCoverageProblem } from "../../shared/filming";
import { CommandFailed, type ExitCode, type Terminal } from "./terminal";

/** Largest problem read, in characters. */
const MAX_INPUT = 8 * 1024 * 1024;

async function allOf(terminal: Terminal): Promise<string> {
  const decoder = new TextDecoder("utf-8");
  let text = "";
  for await (const chunk of terminal.stdin as AsyncIterable<Buffer | string>) {
    text += typeof chunk === "string" ? chunk : decoder.decode(chunk, { stream: true });
    if (text.length > MAX_INPUT) throw new CommandFailed(`The problem is longer than ${MAX_INPUT} characters.`);
  }
  return (text + decoder.decode()).replace(/^\uFEFF/, "");
}

/** Reads one coverage problem from standard input and prints its plan. What no plan can film is said on stderr and stands under `lost`. */
export async function coverage(terminal: Terminal): Promise<ExitCode> {
  const text = await allOf(terminal);
  if (text.trim() === "") throw new CommandFailed("There is no problem on standard input: repwright coverage < problem.json");
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    throw new CommandFailed("The problem on standard input is not readable JSON.");
  }
  const read = readCoverageProblem(json);
  if (!read.ok) throw new CommandFailed(read.error);
  for (const warning of coverageWarnings(read.problem)) terminal.err(`${warning}\n`);
  await terminal.out(`${JSON.stringify(planCoverage(read.problem), null, 2)}\n`);
  return 0;
}
