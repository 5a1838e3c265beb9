import { figureOf, isFigure } from "./stream";
import type { Token } from "../schemes/figures";

/** What a first reading of all figures tells about each of them, once it is known where exercises begin. */

/** So many tokens away the same figure may be said again. */
const TWIN = 60;

const many = (count: number): string => (count === 0 ? "0" : count === 1 ? "1" : "2+");

/**
 * Further features of each candidate.
 * @param places - of the candidates in the tokens
 * @param first - the role each got at first, by its number in ROLES
 * @param begins - words at which exercises of the session begin, in order
 */
export function contextOf(tokens: readonly Token[], places: readonly number[], first: readonly number[], begins: readonly number[]): string[][] {
  const wordOf = (at: number): number => tokens[places[at] ?? 0]?.at ?? 0;
  const blocks = places.map((_, at) => {
    let block = 0;
    while (block < begins.length && (begins[block] ?? Infinity) <= wordOf(at)) block += 1;
    return block;
  });
  return places.map((place, at) => {
    const own = first[at] ?? 0;
    const block = blocks[at] ?? 0;
    const token = tokens[place] as Token;
    const role = (offset: number): string => (first[at + offset] === undefined ? "|" : blocks[at + offset] === block ? String(first[at + offset]) : `/${first[at + offset]}`);
    const out = [`p=${own}`, `p-1=${own} ${role(-1)}`, `p+1=${own} ${role(1)}`, `p-2=${role(-2)} ${role(-1)}`, `p+2=${role(1)} ${role(2)}`, `p-1+1=${role(-1)} ${role(1)}`, `P-1=${role(-1)}`, `P+1=${role(1)}`];
    const here = blocks.flatMap((other, index) => (other === block && index !== at ? [index] : []));
    const before = here.filter((index) => index < at);
    const after = here.filter((index) => index > at);
    const has = (list: readonly number[], wanted: number): number => list.filter((index) => first[index] === wanted).length;
    out.push(`same-=${own} ${many(has(before, own))}`, `same+=${own} ${many(has(after, own))}`);
    for (const wanted of [1, 2, 4, 6, 7, 16, 17]) out.push(`h-${wanted}=${many(has(before, wanted))}`, `h+${wanted}=${many(has(after, wanted))}`, `ph-${wanted}=${own} ${many(has(before, wanted))}`, `ph+${wanted}=${own} ${many(has(after, wanted))}`);
    for (const index of before.slice(-6)) out.push(`seen=${own} ${first[index]}`);
    const away = wordOf(at) - (block === 0 ? 0 : (begins[block - 1] ?? 0));
    out.push(`block=${block === 0 ? "none" : away <= 8 ? "8" : away <= 25 ? "25" : away <= 60 ? "60" : "far"}`, `left=${(begins[block] ?? Infinity) - wordOf(at) <= 12 ? "near" : "far"} ${own}`, `pb=${own} ${block === 0 ? "none" : away <= 25 ? "25" : away <= 60 ? "60" : "far"}`, `opening=${block === 0} ${own}`, `last=${block === begins.length}`);
    if (isFigure(token)) {
      const twins = here.filter((index) => {
        const other = tokens[places[index] ?? 0] as Token;
        return isFigure(other) && figureOf(other) === figureOf(token) && Math.abs((places[index] ?? 0) - place) <= TWIN;
      });
      for (const index of twins) out.push(`twin${index < at ? "-" : "+"}=${first[index]}`, `ptwin${index < at ? "-" : "+"}=${own} ${first[index]}`);
      if (twins.length === 0) out.push(`alone=${own}`);
    }
    return out;
  });
}
