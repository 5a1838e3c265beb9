import { numberWords, saidDifferently, type Pace, type Pronunciation } from "../../speech";
import { withoutStars } from "./emphasis";

/** Nobody reads "8" any other way. */
const isPlainNumber = ({ written, said }: Pronunciation): boolean => /^\d{1,3}$/.test(written) && Number(written) <= 100 && said.toLowerCase() === numberWords(Number(written));

/** What of a text is said otherwise than it is written, stars of emphasis left out: "3x8 @ 20 kg" is said "three sets of eight at twenty kilos". */
export const pronounced = (text: string, pronunciations: Pace["pronunciations"]): Pronunciation[] =>
  saidDifferently(withoutStars(text), pronunciations).filter((one) => !isPlainNumber(one));
