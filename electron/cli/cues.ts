import { z } from "zod";
import { readCue } from "../../shared/checks";
import { recordId, type LineCommand } from "./json-lines";

/** A field left out or null is taken as the plainest case. */
const orElse = <T extends z.ZodType>(schema: T, value: z.output<T>) => schema.nullish().transform((given) => given ?? value);

const record = z.object({
  id: recordId,
  text: z.string(),
  family: orElse(z.string(), "general"),
  slot: orElse(z.enum(["cue", "voiceover", "safety", "description"]), "cue"),
  audience: orElse(z.enum(["general", "beginner", "pregnant", "older", "teen"]), "general"),
  exercise: z.string().nullish().transform((given) => given ?? null),
});

/** Coaching text into the labels of what is wrong with it, each once, in the order they come up; empty when it is fine. */
export const cuesCommand: LineCommand<z.output<typeof record>> = {
  record,
  fields: ["labels"],
  answer: ({ text, family, slot, audience, exercise }) => ({ labels: [...new Set(readCue({ text, family, slot, audience, exercise }).map((found) => found.label))] }),
};
