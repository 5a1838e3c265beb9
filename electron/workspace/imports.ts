import type { Answer, Request } from "../../shared/bridge";
import { idMaker } from "../../shared/episode";
import { importBytes, MAX_IMPORT_BYTES, tooBig } from "../../shared/imports";
import { problem } from "./sentences";

/** The draft of an episode from the bytes of captions, a transcript or notes. Touches no file. */
export async function readImport({ name, size, base64 }: Request<"import:read">): Promise<Answer<"import:read">> {
  if (size > MAX_IMPORT_BYTES) return problem("too-big", tooBig(size).message);
  const result = importBytes(Buffer.from(base64, "base64"), name, idMaker(Math.random));
  if (!result.ok) return problem(result.code, result.message);
  const { format, words, sentences, pace, episode, missing, notUnderstood, problems } = result;
  return { ok: true, episode, format, words, sentences, pace, missing: [...missing], notUnderstood: [...notUnderstood], problems: [...problems] };
}
