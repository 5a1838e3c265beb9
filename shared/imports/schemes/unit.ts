import type { Word } from "../types";
import type { Statement } from "./statement";

/**
 * The unit of weights told without one. Where no unit is said at all, how people speak and which weights they take tell: the
 * logarithms of how much likelier a transcript with the word, or with the weight, is in pounds than in kilos, as counted in the
 * 4,689 marked transcripts in which a unit is said.
 */

const SPOKEN: ReadonlyMap<string, number> = new Map(Object.entries({
  "y'all": 5.6, gonna: 2.4, kinda: 4.1, gotta: 3.5, butt: 2.9, guys: 1.8, buddy: 4.1, wanna: 3.1, alright: 1.5, cause: 1.7, "'cause": 2.3, em: 2.3, "'em": 2.3, mom: 3.1, meters: 1.9,
  dollars: 2.8, dollar: 3.5, bucks: 2.6, dude: 3.8, "ain't": 4, gosh: 3.5, favorite: 2.8, truck: 2.7, inches: 1.8, folks: 1.6, grab: 1.3, real: 1.2, hey: 1.4, guy: 1.9, switch: 1.8,
  workout: 1.4, regular: 3.1, center: 2.5, college: 2.6, apartment: 2, centimetres: -4.4, metres: -2.6, metre: -3, lovely: -2.8, bum: -3, mate: -4.3, lad: -4, lads: -3.8, cheers: -3.9,
  favourite: -3.7, proper: -2.4, properly: -2.6, must: -2.6, nearly: -1.9, quite: -2.7, hiya: -3.6, physio: -2.1, holiday: -3.4, programme: -3.3, mum: -2.9, bloke: -3.3, rubbish: -3.2,
  wee: -2.8, ciao: -2.8, sofa: -2.3, brilliant: -3.2, quid: -3.1, cent: -3, grand: -2.5, neighbours: -2.8, "g'day": -3, repetitions: -2.3, afterwards: -3.4, bits: -2.8, swap: -1.2,
  colour: -1.7, centre: -2, trousers: -2.4, kettle: -1.3, tin: -2, tins: -1.7, tummy: -1.5, telly: -2.5, fortnight: -2.6, garden: -1.9, reckon: -2.4, colleague: -1.7,
}));

const TAKEN: ReadonlyMap<string, number> = new Map(Object.entries({
  1: -1.7, 2: -1.2, 2.5: -2.6, 3: -0.8, 4: -2.7, 5: -1.1, 6: -4.6, 7: -3.4, 7.5: -2.1, 8: -1.6, 9: -3.4, 10: -0.8, 12: -1.2, 12.5: -2.1, 14: -3.2, 15: 0.4, 16: -4.5, 17.5: -1.2, 18: -2.9,
  20: -0.4, 22: -3.9, 22.5: -2.2, 24: -4.6, 25: 0.5, 26: -2.4, 27.5: -2.9, 28: -3.6, 32: -3.6, 32.5: -2.8, 34: -1.8, 35: 0.3, 36: -2.4, 37.5: -2.3, 42: -1.2, 42.5: -1.8, 44: 2.3, 45: 0.9,
  47.5: -2.4, 52.5: -1.6, 53: 4.5, 57.5: -2.2, 60: -0.3, 62.5: -2.3, 65: 0.7, 67.5: -1.8, 72.5: -2.4, 75: 0.4, 77.5: -2.1, 82.5: -2.3, 87.5: -1.7, 90: 0.5, 92.5: -1.1, 95: 2, 97.5: -1.6,
  100: -0.3, 105: 0.4, 110: 0.3, 115: 2, 117.5: -1.2, 125: 0.6, 135: 4, 145: 2.3, 155: 3.8, 165: 2.8, 170: -1, 175: 3.4, 180: 1.7, 185: 5.4, 195: 4.2, 200: 0.6, 205: 4.6, 215: 2.8, 225: 6.4,
  230: 3.4, 235: 3.6, 245: 4.9, 250: 3.4, 255: 4.1, 265: 3.9, 270: 4.9, 275: 5.5, 295: 4, 300: 2.6, 315: 5, 360: 4.3, 365: 3.9, 405: 4,
}));

/** Before anything is heard: one transcript in four is in pounds. */
const BEFORE = -1.1;
/** Words and weights of one speaker go together; each counts for half. */
const SHARE = 0.5;
/** Said once, a unit may be that of something else: "I lost a pound". So much it counts then. */
const ONCE = 4;

/** The unit that is said more often, of whatever; the likelier one where none is said, or one just once more than the other. */
export function unitOf(statements: readonly Statement[], words: readonly Word[]): "kg" | "lb" {
  const said = (unit: RegExp): number => words.filter(({ plain }) => unit.test(plain)).length;
  const [pounds, kilos] = [said(/(?:^|\d)(?:pounds?|pounders?|lbs?)$/), said(/(?:^|\d)(?:kilos?|kgs?|kilograms?)$/)];
  if (Math.abs(pounds - kilos) > 1) return pounds > kilos ? "lb" : "kg";
  const spoken = new Set(words.map(({ plain }) => plain));
  const taken = new Set(statements.flatMap(({ says }) => says.load?.value ?? []));
  const all = [...[...spoken].map((word) => SPOKEN.get(word) ?? 0), ...[...taken].map((value) => TAKEN.get(String(value)) ?? 0)];
  return BEFORE + ONCE * (pounds - kilos) + SHARE * all.reduce((sum, each) => sum + each, 0) > 0 ? "lb" : "kg";
}
