import { deflateSync, inflateSync } from "fflate";

/** Stands in front of every code; the digit is the version of its form. */
const HEAD = "RWS";
const CODE_VERSION = 1;
const CHECK_LENGTH = 7;
/** Longest code and report that are looked at, in characters and bytes; a session of 400 blocks stays far below. */
export const MAX_CODE = 200_000;
export const MAX_REPORT_BYTES = 2_000_000;

const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

/** RFC 4648 base64url without padding; the alphabet survives every messenger and needs no quoting. */
function toLetters(bytes: Uint8Array): string {
  let out = "";
  for (let at = 0; at < bytes.length; at += 3) {
    const group = ((bytes[at] ?? 0) << 16) | ((bytes[at + 1] ?? 0) << 8) | (bytes[at + 2] ?? 0);
    for (let i = 0; i < Math.min(4, bytes.length - at + 1); i++) out += LETTERS.charAt((group >> (18 - 6 * i)) & 63);
  }
  return out;
}

function fromLetters(text: string): Uint8Array {
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let held = 0;
  let bits = 0;
  let at = 0;
  for (const letter of text) {
    held = ((held << 6) | LETTERS.indexOf(letter)) & 0xffff;
    bits += 6;
    if (bits >= 8) bytes[at++] = (held >> (bits -= 8)) & 255;
  }
  return bytes;
}

/** CRC-32, reflected, polynomial EDB88320. @source ISO 3309, ITU-T V.42 */
export function crc32(text: string): number {
  let crc = ~0;
  for (const byte of new TextEncoder().encode(text)) {
    crc ^= byte;
    for (let i = 0; i < 8; i++) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  return ~crc >>> 0;
}

const checkOf = (text: string): string => crc32(text).toString(36).padStart(CHECK_LENGTH, "0");

/** A JSON text as one line to copy: head and version, the packed text, its checksum. "RWS1.q1YqS8xNVbJS....0k3x9az" */
export function writeCode(json: string): string {
  const body = `${HEAD}${CODE_VERSION}.${toLetters(deflateSync(new TextEncoder().encode(json), { level: 9 }))}`;
  return `${body}.${checkOf(body)}`;
}

export type CodeRead = { readonly ok: true; readonly json: string } | { readonly ok: false; readonly reason: "none" | "damaged" | "newer" };

/** The JSON text of a code. Line breaks and words around it, as messengers add them, do no harm. */
export function readCode(text: string): CodeRead {
  const bare = text.replace(/[\s\u200b-\u200f\u2060\ufeff>]+/g, "");
  const head = /RWS(\d+)\./.exec(bare);
  if (!head) return { ok: false, reason: "none" };
  if (Number(head[1]) > CODE_VERSION) return { ok: false, reason: "newer" };
  const found = /(RWS1\.([A-Za-z0-9_-]+))\.([0-9a-z]{7})/.exec(bare.slice(head.index));
  const [, body = "", letters = "", check = ""] = found ?? [];
  if (!found || checkOf(body) !== check) return { ok: false, reason: "damaged" };
  try {
    const json = inflateSync(fromLetters(letters), { out: new Uint8Array(MAX_REPORT_BYTES) });
    return { ok: true, json: new TextDecoder("utf-8", { fatal: true }).decode(json) };
  } catch {
    return { ok: false, reason: "damaged" };
  }
}
