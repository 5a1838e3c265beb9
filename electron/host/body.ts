import type { IncomingMessage } from "node:http";
import type { Refusal } from "./door";

/** Largest request taken, in bytes: an 8 MB episode and what is wrapped around it. */
export const MAX_BODY_BYTES = 10 * 1024 * 1024;

/** The JSON of a request's body, read no further than the limit. */
export async function readJson(request: IncomingMessage): Promise<{ readonly json: unknown } | Refusal> {
  const tooBig: Refusal = { status: 413, message: `A request is at most ${MAX_BODY_BYTES / 1024 / 1024} MB.` };
  if (!/^application\/json(?:;|$)/i.test(request.headers["content-type"] ?? "")) return { status: 415, message: "A request must be application/json." };
  if (Number(request.headers["content-length"] ?? 0) > MAX_BODY_BYTES) return tooBig;
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of request as AsyncIterable<Buffer>) {
    size += chunk.length;
    if (size > MAX_BODY_BYTES) return tooBig;
    chunks.push(chunk);
  }
  try {
    return { json: JSON.parse(Buffer.concat(chunks).toString("utf8")) as unknown };
  } catch {
    return { status: 400, message: "The request is not readable JSON." };
  }
}
