import { constants } from "node:fs";
import { lstat } from "node:fs/promises";
import { join } from "node:path";
import type { Take } from "../../../shared/bridge";
import type { Disk } from "../atomic-write";
import { makeFolder } from "../make-folder";
import { errorCode, type Problem } from "../sentences";
import { readTakes, withTake, writeTakes } from "./take-list";
import { underFreeName } from "./take-name";

/** Copies one sound file, under its own name where that is free. @returns the copy's name */
async function copySound(from: string, to: string, name: string, disk: Disk): Promise<string> {
  const copy = (as: string): Promise<void> => disk.copyFile(join(from, name), join(to, as), constants.COPYFILE_EXCL | constants.COPYFILE_FICLONE);
  try {
    await copy(name);
    return name;
  } catch (error) {
    if (errorCode(error) !== "EEXIST") throw error;
    return underFreeName(name.replace(/(?:-take-\d+)?\.wav$/, ""), copy);
  }
}

const isPlainFile = (path: string): Promise<boolean> => lstat(path).then((facts) => facts.isFile(), () => false);

/**
 * Copies the takes of one folder into another, sounds first and the list last. What lies in the other folder stays and keeps its
 * name; takes that are there already are not copied twice. A take whose sound is gone goes along for its seconds.
 * @throws the system's error; what was copied until then is taken away again
 */
export async function copyTakes(from: string, to: string, disk: Disk): Promise<{ ok: true } | Problem> {
  const [source, target] = [await readTakes(from), await readTakes(to)];
  if (!source.ok) return source;
  if (!target.ok) return target;
  const missing = source.takes.filter(({ id }) => !target.takes.some((one) => one.id === id));
  if (missing.length === 0) return { ok: true };
  await makeFolder(to, disk);
  const made: string[] = [];
  try {
    let takes: Take[] = target.takes;
    for (const take of missing) {
      if (take.file === null || !(await isPlainFile(join(from, take.file)))) takes = withTake(takes, take);
      else {
        const file = await copySound(from, to, take.file, disk);
        made.push(file);
        takes = withTake(takes, { ...take, file });
      }
    }
    await writeTakes(to, takes, disk);
    return { ok: true };
  } catch (error) {
    // They are copies of this very attempt, noted nowhere; half of them would only fill the disk.
    for (const file of made) await disk.rm(join(to, file), { force: true }).catch(() => undefined);
    throw error;
  }
}
