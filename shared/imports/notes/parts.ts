import type { BlockKind } from "../../episode";
import type { Word } from "../types";

/** Parts of an episode, as notes name them. "alone" names stand alone or before a sign; the others may have words right behind. */
const PARTS: readonly { readonly kind: BlockKind; readonly name: RegExp; readonly alone?: true }[] = [
  { kind: "warm-up", name: /^(?:(?:general |quick |short |dynamic )?warm[ -]?up|w\/u|wu)(?! ?(?:sets?|reps?|well|properly|first|before|your|the)\b)\b/ },
  { kind: "cool-down", name: /^(?:cool[ -]?down|warm[ -]?down|wind[ -]?down|c\/d|cd)(?! ?(?:well|properly|first|before|your|the)\b)\b/ },
  { kind: "opening", name: /^(?:opening|opener|intro(?:duction)?|start|welcome|hook)\b/, alone: true },
  { kind: "warm-up", name: /^(?:mobility|prep(?:aration)?|activation)\b/, alone: true },
  { kind: "cool-down", name: /^(?:stretch(?:es|ing)?)\b/, alone: true },
  { kind: "closing", name: /^(?:closing|closer|outro|end(?:ing)?|end card|sign[ -]?off|wrap[ -]?up|good ?bye|bye|call to action|cta)\b/, alone: true },
  { kind: "talk", name: /^(?:talk|chat|notes?|ideas|thoughts|general|misc)\b/, alone: true },
];

/** What an opening and a closing say when nobody names them. */
const GREETING = /^(?:hi|hello|hey|hiya|welcome(?: back)?|good (?:morning|evening) (?:everyone|all|folks))\b/;
const FAREWELL = /^(?:see (?:you|ya)|thanks for watching|bye|until next|that's (?:it|all) for)\b/;

export interface PartRead {
  readonly kind: BlockKind;
  /** As it is written, with a capital. */
  readonly title: string;
  /** What stands behind it in the row. */
  readonly behind: string;
  /** Words behind it, parted by no sign. */
  readonly isOpen: boolean;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A heading that shouts, in sentence case. */
export const calm = (text: string): string => (text.length > 3 && text === text.toUpperCase() ? capital(text.toLowerCase()) : text);

const bareOf = (text: string): string => text.replace(/^[*_#\s]+|[*_\s]+$/g, "");

/** The part of an episode a row names, with words behind it or not; null when it names none. */
export function partOf(text: string): PartRead | null {
  const bare = bareOf(text);
  const plain = bare.toLowerCase();
  for (const { kind, name, alone } of PARTS) {
    const found = name.exec(plain)?.[0];
    if (found === undefined) continue;
    const rest = bare.slice(found.length);
    // "Warm up (10 min)" is a heading as a whole.
    if (/^[\s.*_:–—-]*(?:\(?\d+(?: ?[-–] ?\d+)? ?(?:min|mins|minutes|')\)?)?[\s.*_:]*$/.test(rest)) return { kind, title: capital(calm(bare).replace(/[\s.:*_–—-]+$/, "")), behind: "", isOpen: false };
    const [sign = ""] = /^[\s*_]*(?::|[–—-](?=\s)|\.(?=\s)|\(|,)?[\s*_]*/.exec(rest) ?? [];
    const behind = rest.slice(sign.length);
    const isOpen = !/[:–—(-]/.test(sign);
    if (behind === "" || (isOpen && (alone === true || !/^\s/.test(rest)))) continue;
    return { kind, title: capital(calm(bare.slice(0, found.length))), behind: sign.includes("(") ? `(${behind}` : behind, isOpen };
  }
  return null;
}

const start = (words: readonly Word[]): string => words.slice(0, 4).map(({ plain }) => plain).filter((plain) => plain !== "").join(" ");

/** Does it greet? Then it is said in the opening. */
export const isGreeting = (words: readonly Word[]): boolean => GREETING.test(start(words));
/** Does it take leave? Then it is said in the closing. */
export const isFarewell = (words: readonly Word[]): boolean => FAREWELL.test(start(words));
