import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { z } from "zod";
import { takeSchema, type Take } from "../../../shared/bridge";
import { writeAtomic, type Disk } from "../atomic-write";
import { diskProblem, errorCode, problem, type Problem } from "../sentences";

const LIST_NAME = "takes.json";
const listSchema = z.object({ format: z.literal("repwright-takes"), version: z.literal(1), takes: z.array(takeSchema).max(100_000) });

/** The takes noted in an episode's folder of takes; none when nothing was noted yet. A list that cannot be read is left as it is. */
export async function readTakes(folder: string): Promise<{ ok: true; takes: Take[] } | Problem> {
  let text: string;
  try {
    text = await readFile(join(folder, LIST_NAME), "utf8");
  } catch (error) {
    return errorCode(error) === "ENOENT" ? { ok: true, takes: [] } : diskProblem(error, "The list of takes could not be read");
  }
  const damaged = (why: string): Problem => problem("damaged", `The list of takes, ${join(folder, LIST_NAME)}, cannot be read and is left as it is: ${why}. Move it away to begin a new one; the sound files stay.`);
  try {
    const read = listSchema.safeParse(JSON.parse(text));
    if (read.success) return { ok: true, takes: read.data.takes };
    const issue = read.error.issues[0];
    return damaged(`at ${issue?.path.join(".") || "the top"}, ${issue?.message ?? "it is no list of takes"}`);
  } catch {
    return damaged("it is not JSON");
  }
}

/** @throws the system's error; the list that was there is then still there */
export async function writeTakes(folder: string, takes: readonly Take[], disk: Disk): Promise<void> {
  const list = { format: "repwright-takes", version: 1, takes };
  await writeAtomic(join(folder, LIST_NAME), Buffer.from(`${JSON.stringify(list, null, 2)}\n`, "utf8"), disk);
}

const isMeasured = (take: Take): boolean => take.seconds !== null && take.seconds > 0;

/** Whether a take that is only now begun counts for its line: a measured one that counts is not given up for one that may be broken off. */
export const countsAtOnce = (takes: readonly Take[], line: string): boolean => !takes.some((one) => one.line === line && one.chosen && isMeasured(one));

/** Whether a take that has come to its end counts for its line: one that was measured does, unless a newer one already counts. */
export function countsAtItsEnd(takes: readonly Take[], take: Take): boolean {
  const newer = takes.slice(takes.findIndex(({ id }) => id === take.id) + 1);
  return take.chosen || (isMeasured(take) && countsAtOnce(newer, take.line));
}

/** The list with `take` in it, in the place of the one with its id or at the end; a chosen one is the only one chosen of its line. */
export function withTake(takes: readonly Take[], take: Take): Take[] {
  const others = takes.map((one) => (one.line === take.line && one.id !== take.id && take.chosen ? { ...one, chosen: false } : one));
  return others.some(({ id }) => id === take.id) ? others.map((one) => (one.id === take.id ? take : one)) : [...others, take];
}
