import { NUMBER } from "./numbers";
import { MEASURED_THINGS, UNIT_PATTERN, UNITS_SAID, unitOf, type SpokenUnit } from "./units";

/** A thing may have two: "16 kg or 35 lb bell". */
const MEASURE = new RegExp(String.raw`(?<![A-Za-z\d])(${NUMBER})(\s?-?)(${UNIT_PATTERN})(?![A-Za-z])(?=(\s+(?:or\s(?:${NUMBER})\s?(?:${UNIT_PATTERN})\s+)?(?:${MEASURED_THINGS})\b)?)`, "gi");
/** A weight or a length and another: "10kg/22lb". Seconds of work and of rest are said one after the other instead. */
const TWO_UNITS = /(?<![A-Za-z])(\d\s?(?:kgs?|lbs?|g|km|cm|mm|m|yds?|ft))\s?\/\s?(?=\d)/g;
const ALONE = UNITS_SAID.filter(({ alone }) => alone).map(({ written }) => written).join("|");
const UNIT_ALONE = new RegExp(String.raw`(?<![\w.])(?:(${ALONE}) for \1|(?<=\b(per|an?|each|every|another)\s)(?:${ALONE})|(?:${ALONE}))(?!\w)`, "g");

/** What is drunk, or what it is in: no side of the body. */
const DRUNK = /^\s(?:of|a day|per day|daily|bags?|bottles?|jugs?|tanks?|packs?|backpacks?|buckets?|water)\b/i;
const DRINKING = /\b(?:drink|drinks|drank|sip|water|hydrate|bottle|fluids?|fill|filled)\b[^.!?]*$/i;
/** Both sides are counted here. */
const RIGHT_SIDE = /\d\s?R\b/;
/** More litres than this are only what is plainly drunk or carried. */
const MOST_DRUNK = 4;

/** Whether a capital L after a number is litres; else it is reps on the left. */
function isLitre(figures: string, before: string, after: string): boolean {
  if (/\./.test(figures) || DRUNK.test(after) || DRINKING.test(before)) return true;
  return Number(figures) <= MOST_DRUNK && !RIGHT_SIDE.test(before) && !RIGHT_SIDE.test(after);
}

/** As much of a text beside a measure as shows what it is. */
const NEAR = 48;

/** Half a second, half a minute: other units are measured, and their decimals read out. */
const isTime = ({ one }: SpokenUnit): boolean => /^(?:second|minute|hour)$/.test(one);

/** "The 60 cm one" is a thing, "60 cm one way" is not. */
const isThing = (thing: string | undefined, before: string): boolean => thing !== undefined && (!/\sones?$/.test(thing) || /\b(?:an?|the|this|that|my|your|another)\s$/i.test(before));

/** Numbers with their units in words; the numbers stay in figures for later. */
export function sayMeasures(text: string): string {
  const said = text.replace(TWO_UNITS, "$1 or ").replace(MEASURE, (written: string, figures: string, link: string, unitText: string, thing: string | undefined, at: number, whole: string) => {
    const [before, after] = [whole.slice(Math.max(0, at - NEAR), at), whole.slice(at + written.length, at + written.length + NEAR)];
    const unit = unitOf(unitText === "L" && isLitre(figures, before, after) ? "l" : unitText);
    if (!unit) return written;
    const names = link.endsWith("-") || isThing(thing, before);
    if (figures === "0.5" && isTime(unit)) return names ? `half-${unit.one} ` : `half ${unit.one === "hour" ? "an" : "a"} ${unit.one} `;
    return `${figures} ${figures === "1" || names ? unit.one : unit.many} `;
  });
  return said.replace(/\bRIR\b/g, "reps in reserve").replace(UNIT_ALONE, (written: string, twice: string | undefined, each: string | undefined) => {
    const unit = unitOf(twice ?? written);
    if (!unit) return written;
    return twice === undefined ? (each === undefined ? unit.many : unit.one) : `${unit.one} for ${unit.one}`;
  });
}
