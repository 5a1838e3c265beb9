import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { z } from "zod";
import { voiceSchema, type Voice } from "../../shared/bridge";
import { writeAtomic, type Disk } from "./atomic-write";
import { makeFolder } from "./make-folder";
import { diskProblem, errorCode, problem, type Problem } from "./sentences";

const VOICE_NAME = "voice.json";
const fileSchema = z.object({ format: z.literal("repwright-voice"), version: z.literal(1), voice: voiceSchema.nullable() });

/** The pace measured in this library; null when none was. A file that cannot be read is left as it is. */
export async function readVoice(library: string): Promise<{ ok: true; voice: Voice | null } | Problem> {
  try {
    const read = fileSchema.safeParse(JSON.parse(await readFile(join(library, VOICE_NAME), "utf8")));
    if (read.success) return { ok: true, voice: read.data.voice };
    return problem("damaged", `Your pace in ${VOICE_NAME} cannot be read and is left as it is; the usual pace is used.`);
  } catch (error) {
    if (errorCode(error) === "ENOENT") return { ok: true, voice: null };
    if (error instanceof SyntaxError) return problem("damaged", `Your pace in ${VOICE_NAME} is not JSON and is left as it is; the usual pace is used.`);
    return diskProblem(error, "Your pace could not be read");
  }
}

export async function keepVoice(library: string, voice: Voice | null, disk: Disk): Promise<{ ok: true } | Problem> {
  try {
    await makeFolder(library, disk);
    const file = { format: "repwright-voice", version: 1, voice };
    await writeAtomic(join(library, VOICE_NAME), Buffer.from(`${JSON.stringify(file, null, 2)}\n`, "utf8"), disk);
    return { ok: true };
  } catch (error) {
    return diskProblem(error, voice === null ? "The usual pace was not noted" : "Your pace was not kept");
  }
}
