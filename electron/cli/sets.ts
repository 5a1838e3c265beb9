import { z } from "zod";
import { parseSetLine } from "../../shared/training";
import { recordId, type LineCommand } from "./json-lines";

const record = z.object({ id: recordId, text: z.string() });

/** Set lines into schemes. A line that is no scheme is an answer, not a failure of the command. */
export const setsCommand: LineCommand<z.output<typeof record>> = {
  record,
  fields: ["parse"],
  answer: ({ text }) => {
    const parse = parseSetLine(text);
    return parse.ok ? { parse: parse.scheme } : { parse: null, error: parse.error };
  },
};
