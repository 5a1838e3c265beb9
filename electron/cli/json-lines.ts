import { z } from "zod";
import type { ExitCode, Terminal } from "./terminal";

/** Longest line read, in characters. */
const MAX_LINE = 1_000_000;

type Id = string | number | null;

/** One line per record; the id comes back as it was sent. */
export interface LineCommand<T extends { readonly id: Id }> {
  readonly record: z.ZodType<T>;
  readonly answer: (record: T) => Record<string, unknown>;
  /** The fields of an answer that could not be given, each null. */
  readonly fields: readonly string[];
}

export const recordId = z.union([z.string(), z.number(), z.null()]).default(null);

/** Lines of a stream, without their ends, each at most one character longer than is allowed. */
async function* linesOf(stream: AsyncIterable<Buffer | string>): AsyncGenerator<string> {
  const decoder = new TextDecoder("utf-8");
  let rest = "";
  const take = (text: string): string[] => {
    const parts = (rest + text).split("\n");
    // What exceeds the limit is dropped while it arrives, so one endless line cannot fill the memory.
    rest = (parts.pop() ?? "").slice(0, MAX_LINE + 1);
    return parts;
  };
  for await (const chunk of stream) yield* take(typeof chunk === "string" ? chunk : decoder.decode(chunk, { stream: true }));
  yield* take(decoder.decode());
  if (rest !== "") yield rest;
}

/** The id of a record that is otherwise wrong, so that its answer can still be matched. */
function idOf(json: unknown): Id {
  const found = z.object({ id: recordId }).safeParse(json);
  return found.success ? found.data.id : null;
}

function answerLine<T extends { readonly id: Id }>(command: LineCommand<T>, line: string, number: number): { readonly ok: boolean; readonly answer: Record<string, unknown> } {
  const refuse = (id: Id, error: string): { ok: false; answer: Record<string, unknown> } => ({
    ok: false,
    answer: { id, ...Object.fromEntries(command.fields.map((field) => [field, null])), error },
  });
  if (line.length > MAX_LINE) return refuse(null, `Line ${number} is longer than ${MAX_LINE} characters.`);
  let json: unknown;
  try {
    json = JSON.parse(line);
  } catch {
    return refuse(null, `Line ${number} is not readable JSON.`);
  }
  const parsed = command.record.safeParse(json);
  if (parsed.success) return { ok: true, answer: { id: parsed.data.id, ...command.answer(parsed.data) } };
  const issue = parsed.error.issues[0];
  return refuse(idOf(json), `Line ${number}, at ${issue?.path.map(String).join(".") || "the top"}: ${issue?.message ?? "wrong shape"}.`);
}

/**
 * Reads records, one JSON object a line, and answers each on its own line at once and in the same order.
 * A record that cannot be read is answered with an `error`, so answers keep step with records; empty lines are no records.
 * @returns 2 when any record could not be read
 */
export async function answerLines<T extends { readonly id: Id }>(terminal: Terminal, command: LineCommand<T>): Promise<ExitCode> {
  let code: ExitCode = 0;
  let number = 0;
  for await (const raw of linesOf(terminal.stdin)) {
    number++;
    const line = (number === 1 ? raw.replace(/^\uFEFF/, "") : raw).trim();
    if (line === "") continue;
    const { ok, answer } = answerLine(command, line, number);
    if (!ok) {
      code = 2;
      terminal.err(`${String(answer["error"])}\n`);
    }
    await terminal.out(`${JSON.stringify(answer)}\n`);
  }
  return code;
}
