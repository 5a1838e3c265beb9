import { BREAK, type Token } from "../tokens";
import { elementOf, elementSize, type Hits } from "./vocabulary";

/**
 * Templates: a small, readable way to write "these words, with a little room between".
 *
 *   let|allow your? <back> ~2 round+
 *   <back> &6 <round>
 *
 * `a|b` is a choice, `?` makes a word optional, `<name>` is a word class of lexicon.ts, `~3` is up to three words of the
 * same clause, `~,3` may cross commas, `~.3` whole sentences. `&6` is "within six words, whichever comes first" in one sentence,
 * `&.6` across sentences. A word ending in `+` is a verb in all its forms, in `%` a noun with or without s, in `*` anything
 * that starts so; `/v`, `/n`, `/j`, `/r` ask for a verb, noun, adjective, adverb; `_` stands for a blank inside a phrase.
 */
interface Step {
  readonly element: number;
  readonly optional: boolean;
  /** At most this many words before it, and the strongest break they may cross. */
  readonly room: number;
  readonly across: number;
}

interface Group {
  readonly steps: readonly Step[];
  /** Distance to the groups before it. */
  readonly room: number;
  readonly across: number;
}

export interface Template {
  readonly groups: readonly Group[];
  /** The required element that is said in the fewest ways. */
  readonly anchor: number;
  readonly required: readonly number[];
}

/** Tokens from `from` up to, not including, `to`. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

export interface Tokenised {
  readonly tokens: readonly Token[];
  readonly hits: Hits;
}

const CROSSES: Readonly<Record<string, number>> = { "": BREAK.none, ",": BREAK.comma, ".": BREAK.sentence };

export function compile(template: string): Template {
  const groups: { steps: Step[]; room: number; across: number }[] = [{ steps: [], room: 0, across: 0 }];
  let room = 0;
  let across: number = BREAK.none;
  for (const part of template.trim().split(/\s+/)) {
    const gap = /^([~&])([,.]?)(\d+)$/.exec(part);
    const reach = CROSSES[gap?.[2] ?? ""] ?? BREAK.none;
    if (gap?.[1] === "&") groups.push({ steps: [], room: Number(gap[3]), across: Math.max(BREAK.colon, reach) });
    if (gap) {
      room = gap[1] === "~" ? Number(gap[3]) : 0;
      across = gap[1] === "~" ? reach : BREAK.none;
      continue;
    }
    const optional = part.endsWith("?");
    const element = elementOf((optional ? part.slice(0, -1) : part).split("|"));
    groups.at(-1)?.steps.push({ element, optional, room, across });
    if (!optional) {
      room = 0;
      across = BREAK.none;
    }
  }
  const required = groups.flatMap(({ steps }) => steps.filter(({ optional }) => !optional).map(({ element }) => element));
  const [anchor] = [...required].sort((a, b) => elementSize(a) - elementSize(b));
  if (anchor === undefined) throw new Error(`template: nothing is required in "${template}"`);
  return { groups, anchor, required };
}

/** The strongest break before the tokens from `from` up to and with `to`. */
function breakBetween(tokens: readonly Token[], from: number, to: number): number {
  let strongest = 0;
  for (let i = from; i <= to; i += 1) strongest = Math.max(strongest, tokens[i]?.gap ?? 0);
  return strongest;
}

/** Where the steps from `step` on end when read from token `at`, or -1. */
function endFrom({ tokens, hits }: Tokenised, steps: readonly Step[], step: number, at: number): number {
  const here = steps[step];
  if (!here) return at;
  const places = hits.get(here.element) ?? [];
  for (let i = 0; i < places.length; i += 2) {
    const from = places[i] ?? 0;
    if (from < at) continue;
    if (from > at + here.room) break;
    if (breakBetween(tokens, at, from) > here.across) continue;
    const end = endFrom({ tokens, hits }, steps, step + 1, from + (places[i + 1] ?? 1));
    if (end >= 0) return end;
  }
  return here.optional ? endFrom({ tokens, hits }, steps, step + 1, at) : -1;
}

/** Where a match begins when the optional words in front of it are said too. */
function startBefore({ tokens, hits }: Tokenised, leading: readonly Step[], from: number): number {
  let start = from;
  for (const { element } of [...leading].reverse()) {
    const places = hits.get(element) ?? [];
    for (let i = 0; i < places.length; i += 2) {
      const at = places[i] ?? 0;
      if (at + (places[i + 1] ?? 1) === start && (tokens[start]?.gap ?? BREAK.sentence) === BREAK.none) {
        start = at;
        break;
      }
    }
  }
  return start;
}

function groupSpans(text: Tokenised, { steps }: Group): Span[] {
  const first = steps.findIndex(({ optional }) => !optional);
  const places = text.hits.get(steps[first]?.element ?? -1) ?? [];
  const spans: Span[] = [];
  for (let i = 0; i < places.length; i += 2) {
    const from = places[i] ?? 0;
    const to = endFrom(text, steps, first + 1, from + (places[i + 1] ?? 1));
    if (to >= 0) spans.push({ from: startBefore(text, steps.slice(0, first), from), to });
  }
  return spans;
}

/** Every place where a template shows. */
export function find({ groups, required }: Template, text: Tokenised): Span[] {
  for (const element of required) if (!text.hits.has(element)) return [];
  const [head, ...others] = groups;
  if (!head) return [];
  let spans = groupSpans(text, head);
  for (const group of others) {
    if (spans.length === 0) return [];
    const next = groupSpans(text, group);
    spans = spans.flatMap((span) => {
      const near = next.filter((other) => {
        const [left, right] = other.from < span.from ? [other, span] : [span, other];
        return right.from >= left.to && right.from - left.to <= group.room && breakBetween(text.tokens, left.to, right.from) <= group.across;
      });
      return near.map((other) => ({ from: Math.min(span.from, other.from), to: Math.max(span.to, other.to) }));
    });
  }
  return spans;
}
