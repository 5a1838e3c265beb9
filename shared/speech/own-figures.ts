import { pluralFigures } from "./plural-figures";
import { bareTempos } from "./tempos";

/** Figures with a letter behind or among them that is no unit and no times: "31X0", "in your 40s". Where they begin and end in the text. */
export const ownFigures = (text: string): { readonly at: number; readonly end: number }[] => [...bareTempos(text), ...pluralFigures(text)];
