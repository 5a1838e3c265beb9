import type { Saying } from "./schemes";

/** Signs of an address that are said; the others part its words. */
const SIGNS: Readonly<Record<string, string>> = { "/": "slash", ".": "dot", "@": "at", "-": "dash", _: "underscore", "?": "question mark", "=": "equals", "&": "and", "#": "hash", ":": "colon", "+": "plus" };
/** Ends of an address that are no words of a text with the space after its full stop forgotten. */
const DOMAINS = "com|org|net|info|example|test|app|fit|tv|eu|io|co\\.uk|uk|de|ie|ca|au|nz";

/** Nobody reads out how a page is asked for: "https://" and "www." go without saying. */
const addressWords = (written: string): string =>
  written.replace(/^(?:https?:\/\/)?(?:www\.)?/i, "").replace(/\/$/, "").replace(/[^\p{L}\p{N}\s]/gu, (sign) => ` ${SIGNS[sign] ?? ""} `).replace(/\s+/g, " ").trim();

const PATH = String.raw`(?:\/[^\s<>"()]*)?(?<![.,;:!?'/])\/?`;

/** Addresses of pages and of mail, as they are read out: "example.com/trail" is "example dot com slash trail". */
export const ADDRESS_SAYINGS: readonly Saying[] = [
  { written: /(?<![\w@])https?:\/\/[^\s<>"()]*[^\s<>"().,;:!?']/gi, said: (m) => addressWords(m[0] ?? "") },
  { written: /(?<![\w@.-])[\w.+-]*\w@\w[\w-]*(?:\.\w[\w-]*)+/g, said: (m) => (/\.[a-z]{2,}$/i.test(m[0] ?? "") ? addressWords(m[0] ?? "") : m[0] ?? "") },
  { written: new RegExp(String.raw`(?<![\w@.-])(?:www\.[\w-]+(?:\.[\w-]+)*|[a-z\d][a-z\d-]*(?:\.[a-z\d-]+)*\.(?:${DOMAINS})(?![\w-]|\.\w))${PATH}`, "gi"), said: (m) => addressWords(m[0] ?? "") },
];
