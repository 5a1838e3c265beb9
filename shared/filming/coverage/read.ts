import { z } from "zod";
import { SET_KINDS, type CoverageProblem } from "./types";

const DAY = 86_400;
/** Most of everything; far above a session, low enough for a plan in seconds: 40 sets with 12 wants take a tenth of one. */
const MOST = { blocks: 100, sets: 100, wants: 40, text: 200, weight: 1_000_000 } as const;

const id = z.string().trim().min(1, "expected a name, found an empty one").max(MOST.text, `expected at most ${MOST.text} characters`);
const seconds = z.number("expected seconds as a number").min(0, "expected 0 seconds or more").max(DAY, "expected less than a day of seconds");

const set = z.strictObject({ id, kind: z.enum(SET_KINDS, 'expected the kind "ramp", "working" or "demo"'), seconds, restSeconds: seconds });

const want = z.strictObject({
  id,
  mark: id,
  need: z.enum(["must", "nice"], 'expected the need "must" or "nice"'),
  weight: z.number("expected a number").min(0, "expected a weight of 0 or more").max(MOST.weight, `expected a weight of at most ${MOST.weight}`).default(1),
  kind: z.enum(["any", ...SET_KINDS], 'expected the kind "any", "ramp", "working" or "demo"').default("any"),
  sets: z.array(id, "expected a list of sets").max(MOST.sets, `expected at most ${MOST.sets} sets`).optional(),
});

const block = z.strictObject({
  id,
  station: z.string().max(MOST.text, `expected at most ${MOST.text} characters`).default(""),
  changeSeconds: seconds.default(0),
  sets: z.array(set, "expected a list of sets").min(1, "a block needs at least one set").max(MOST.sets, `expected at most ${MOST.sets} sets in a block`),
  wants: z.array(want, "expected a list of wants").max(MOST.wants, `expected at most ${MOST.wants} wants in a block`),
  begun: z.strictObject({ marks: z.array(id.nullable()), restSeconds: seconds }).optional(),
});

const problem = z.strictObject({
  cameras: z.union([z.literal(1), z.literal(2)], "expected one camera or two"),
  moveSeconds: seconds,
  blocks: z.array(block, "expected a list of blocks").min(1, "there is no block").max(MOST.blocks, `expected at most ${MOST.blocks} blocks`),
});

export type CoverageRead = { readonly ok: true; readonly problem: CoverageProblem } | { readonly ok: false; readonly error: string };

/** "blocks[0].sets[2].kind": as it would be written in a program, lists from 0. */
const place = (path: readonly PropertyKey[]): string =>
  path.map((part, i) => (typeof part === "number" ? `[${part}]` : `${i === 0 ? "" : "."}${String(part)}`)).join("") || "the top";

function firstIssue(error: z.ZodError): string {
  const issue = error.issues[0];
  if (!issue) return "This is no coverage problem.";
  const more = error.issues.length > 1 ? ` (and ${error.issues.length - 1} more)` : "";
  const words = issue.message.replace(/^Invalid input: /, "").replace(/^./, (first) => first.toLowerCase());
  return `At ${place(issue.path)}: ${words}${more}.`;
}

/** The first name that stands twice, with both places. Sets and wants are named once in the whole problem. */
function firstDuplicate(found: CoverageProblem): string | null {
  const named = [
    ...found.blocks.map((each, b) => ({ what: "block", name: each.id, path: `blocks[${b}]` })),
    ...found.blocks.flatMap((each, b) => each.sets.map((item, s) => ({ what: "set", name: item.id, path: `blocks[${b}].sets[${s}]` }))),
    ...found.blocks.flatMap((each, b) => each.wants.map((item, w) => ({ what: "want", name: item.id, path: `blocks[${b}].wants[${w}]` }))),
  ];
  const seen = new Map<string, string>();
  for (const { what, name, path } of named) {
    const key = `${what} ${name}`;
    const first = seen.get(key);
    if (first !== undefined) return `At ${path}.id: the ${what} "${name}" already stands at ${first}.`;
    seen.set(key, path);
  }
  return null;
}

/** A coverage problem from a parsed file. @returns the problem, or one sentence that names the place of the first thing wrong */
export function readCoverageProblem(json: unknown): CoverageRead {
  const parsed = problem.safeParse(json);
  if (!parsed.success) return { ok: false, error: firstIssue(parsed.error) };
  const wrongStart = parsed.data.blocks.findIndex(({ begun }) => begun && begun.marks.length !== parsed.data.cameras);
  if (wrongStart >= 0) return { ok: false, error: `At blocks[${wrongStart}].begun.marks: expected one mark for each camera.` };
  const twice = firstDuplicate(parsed.data);
  return twice === null ? { ok: true, problem: parsed.data } : { ok: false, error: twice };
}

/**
 * What no plan can mend, in sentences that name the place: a kind of set that is asked for and does not exist, and more musts than camera places.
 * These are no mistakes of form; the plan says what is lost.
 */
export function coverageWarnings(found: CoverageProblem): string[] {
  return found.blocks.flatMap((each, b) => {
    const missing = each.wants.flatMap((item, w) => (item.kind !== "any" && !each.sets.some(({ kind }) => kind === item.kind)
      ? [`At blocks[${b}].wants[${w}].kind: "${item.id}" asks for a set of the kind "${item.kind}", and block "${each.id}" has none.`] : []));
    const musts = new Set(each.wants.filter(({ need }) => need === "must").map(({ mark }) => mark)).size;
    const places = each.sets.length * found.cameras;
    const crowded = musts > places
      ? [`At blocks[${b}].wants: musts from ${musts} marks, but ${each.sets.length === 1 ? "one set" : `${each.sets.length} sets`} and ${found.cameras === 1 ? "one camera" : "two cameras"}, so at most ${places} of the marks can be filmed.`] : [];
    return [...missing, ...crowded];
  });
}
