import { createHash } from "node:crypto";

/** Fingerprint of a file's bytes: equal stamps, equal bytes. */
export function stampOf(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}
