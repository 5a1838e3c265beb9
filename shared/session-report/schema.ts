import { z } from "zod";
import { UNITS } from "../episode";

export const REPORT_FORMAT = "repwright-session";
/** The newest version this program reads and the one it writes. */
export const REPORT_VERSION = 1;

const id = z.string().regex(/^[A-Za-z0-9_-]{1,64}$/, "expected 1 to 64 letters, digits, - or _");
/** A set counted through its block, from 1. */
const place = z.int().min(1).max(200);
const words = z.string().max(400);

/** What was lifted; loads in the report's unit. */
const lifted = z.strictObject({ load: z.number().min(0).max(2000).nullable(), reps: z.int().min(0).max(1000).nullable(), rir: z.number().min(0).max(10).nullable() });

/** A set that is over. `number` counts within its role; `lifted` is null where nothing was typed. */
const doneSet = z.strictObject({
  block: id, set: place, role: z.enum(["ramp-up", "working", "demonstration", "run"]), number: place, seconds: z.number().min(0).max(86_400).nullable(), lifted: lifted.nullable(),
});

/** A shot with an answer: in the box on a set, or lost. */
const answeredShot = z.strictObject({ block: id, shot: id, set: place.nullable(), got: z.boolean() });

/** A block that came later, was left out or ended early, or was done another way. */
const movedBlock = z.strictObject({ block: id, what: z.enum(["later", "dropped", "alternate"]), words });

/** What came back from the gym. */
export const sessionReportSchema = z.strictObject({
  format: z.literal(REPORT_FORMAT),
  version: z.literal(REPORT_VERSION),
  /** The episode's id, and its title for a sentence when it is another one. */
  episode: id,
  title: words,
  /** Fingerprint of the plan the phone had. */
  plan: z.string().max(64),
  units: z.enum(UNITS),
  sets: z.array(doneSet).max(4000),
  shots: z.array(answeredShot).max(8000),
  blocks: z.array(movedBlock).max(400),
  /** Shots no line asks for: room tone, an opening or closing nobody planned. */
  extras: z.array(z.strictObject({ what: z.enum(["opening", "closing", "room-tone"]), got: z.boolean() })).max(10),
});
export type SessionReport = z.infer<typeof sessionReportSchema>;
