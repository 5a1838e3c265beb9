import { CLASSES } from "./lexicon";
import { verbForms } from "./inflection";
import type { Token } from "../tokens";

/** A phrase of several words that an element accepts; each word is a unit. */
interface Phrase {
  readonly units: readonly number[];
  readonly element: number;
}

/** What one word form can stand for. */
interface Reading {
  readonly units: ReadonlySet<number>;
  readonly elements: readonly number[];
  readonly phrases: readonly Phrase[];
}

type Where = Map<string, number[]>;
const add = (map: Where, key: string, id: number): void => {
  const known = map.get(key);
  if (known) known.push(id);
  else map.set(key, [id]);
};

/** Part-of-speech marks of the template language. */
const TAGS: Readonly<Record<string, readonly string[]>> = { v: ["VERB", "AUX"], n: ["NOUN", "PROPN"], j: ["ADJ"], r: ["ADV"] };

const unitIds = new Map<string, number>();
const exact: Where = new Map();
const lemmas: Where = new Map();
const prefixes: { readonly prefix: string; readonly id: number }[] = [];
const tagOf: (readonly string[] | null)[] = [];
const elementsOfUnit: number[][] = [];
const phrasesOfUnit: Phrase[][] = [];
const elementIds = new Map<string, number>();
const sizes: number[] = [];
let readings = new Map<string, Reading>();

/** A unit is one word of a template: "knee%", "sag+", "hold/v", "dizz*", "back". */
function unitOf(spec: string): number {
  const known = unitIds.get(spec);
  if (known !== undefined) return known;
  const id = unitIds.size;
  unitIds.set(spec, id);
  elementsOfUnit.push([]);
  phrasesOfUnit.push([]);
  const [body = "", tag = ""] = spec.split("/");
  tagOf.push(TAGS[tag] ?? null);
  const last = body.slice(-1);
  const stem = body.slice(0, -1);
  if (last === "+") {
    for (const form of verbForms(stem)) add(exact, form, id);
    add(lemmas, stem, id);
  } else if (last === "%" && stem !== "" && !/\d/.test(stem)) {
    add(exact, stem, id);
    add(exact, `${stem}s`, id);
    if (/(?:s|x|z|ch|sh)$/.test(stem)) add(exact, `${stem}es`, id);
  } else if (last === "*") prefixes.push({ prefix: stem, id });
  else add(exact, body, id);
  return id;
}

/** The members of a choice, word classes opened. */
function opened(alternatives: readonly string[]): string[] {
  return alternatives.flatMap((alternative) => {
    if (!alternative.startsWith("<")) return [alternative];
    const words = CLASSES[alternative.slice(1, -1)];
    if (!words) throw new Error(`template: there is no word class ${alternative}`);
    return opened(words);
  });
}

/** An element is a choice of words and phrases; equal choices are one element. */
export function elementOf(alternatives: readonly string[]): number {
  const members = [...new Set(opened(alternatives))];
  const key = members.join("|");
  const known = elementIds.get(key);
  if (known !== undefined) return known;
  const id = elementIds.size;
  elementIds.set(key, id);
  sizes.push(members.length);
  for (const member of members) {
    const units = member.split(/[_-]/).filter((word) => word !== "").map(unitOf);
    const [first] = units;
    if (first === undefined) continue;
    if (units.length === 1) elementsOfUnit[first]?.push(id);
    else phrasesOfUnit[first]?.push({ units, element: id });
  }
  readings = new Map();
  return id;
}

export const elementCount = (): number => elementIds.size;
/** How many ways there are to say an element; the fewer, the better an anchor. */
export const elementSize = (element: number): number => sizes[element] ?? 0;

function readingOf({ word, lemma, pos }: Token): Reading {
  const key = `${word}/${lemma}/${pos}`;
  const known = readings.get(key);
  if (known) return known;
  const found = [...(exact.get(word) ?? []), ...(lemmas.get(lemma) ?? []), ...prefixes.filter(({ prefix }) => word.startsWith(prefix)).map(({ id }) => id)];
  // "back's" is "back" too.
  if (word.endsWith("'s")) found.push(...(exact.get(word.slice(0, -2)) ?? []));
  const units = new Set(found.filter((id) => tagOf[id]?.includes(pos) ?? true));
  const reading = { units, elements: [...new Set([...units].flatMap((id) => elementsOfUnit[id] ?? []))], phrases: [...units].flatMap((id) => phrasesOfUnit[id] ?? []) };
  if (readings.size > 20_000) readings = new Map();
  readings.set(key, reading);
  return reading;
}

/** Where each element shows in a text: pairs of first token and number of tokens, in order. */
export type Hits = ReadonlyMap<number, readonly number[]>;

export function hitsOf(tokens: readonly Token[]): Hits {
  const hits = new Map<number, number[]>();
  const note = (element: number, at: number, length: number): void => {
    const known = hits.get(element);
    if (known) known.push(at, length);
    else hits.set(element, [at, length]);
  };
  const read = tokens.map(readingOf);
  read.forEach(({ elements, phrases }, at) => {
    for (const element of elements) note(element, at, 1);
    for (const { units, element } of phrases) {
      let length = 1;
      while (length < units.length) {
        const next = read[at + length];
        if (!next || (tokens[at + length]?.gap ?? 9) > 0 || !next.units.has(units[length] ?? -1)) break;
        length += 1;
      }
      if (length === units.length) note(element, at, length);
    }
  });
  return hits;
}
