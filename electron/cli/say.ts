import { z } from "zod";
import { DEFAULT_PACE, speak } from "../../shared/speech";
import { recordId, type LineCommand } from "./json-lines";

const record = z.object({ id: recordId, text: z.string() });

/** Texts into spoken seconds, to the millisecond, at the default pace. */
export const sayCommand: LineCommand<z.output<typeof record>> = {
  record,
  fields: ["seconds", "words", "syllables"],
  answer: ({ text }) => {
    const { seconds, words, syllables } = speak(text, DEFAULT_PACE);
    return { seconds: Math.round(seconds * 1000) / 1000, words, syllables };
  },
};
