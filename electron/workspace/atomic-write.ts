import { randomUUID } from "node:crypto";
import { copyFile, mkdir, open, readdir, rename, rm, stat } from "node:fs/promises";
import { dirname, join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { errorCode } from "./sentences";

/** The few operations that change the disk, so that a test can make any of them fail. */
export interface Disk {
  readonly open: typeof open;
  readonly rename: typeof rename;
  readonly rm: typeof rm;
  readonly mkdir: typeof mkdir;
  readonly copyFile: typeof copyFile;
}

export const nodeDisk: Disk = { open, rename, rm, mkdir, copyFile };

const LEFTOVER = /^\.saving-[0-9a-f-]{36}\.tmp$/;
const HOUR_MS = 3_600_000;

/** Pauses before trying a rename again, milliseconds. */
const PATIENCE_MS = [20, 60, 180];

/** On Windows a virus scanner or a sync program may hold a file for a moment; a rename then fails and soon after does not. */
async function renamePatiently(from: string, to: string, disk: Disk): Promise<void> {
  for (const pause of PATIENCE_MS) {
    try {
      return await disk.rename(from, to);
    } catch (error) {
      if (!["EBUSY", "EPERM", "EACCES"].includes(errorCode(error) ?? "")) throw error;
      await setTimeout(pause);
    }
  }
  return disk.rename(from, to);
}

/** Makes the rename itself last through a power cut. Windows cannot open folders; its rename needs no such step. */
async function syncFolder(folder: string, disk: Disk): Promise<void> {
  try {
    const handle = await disk.open(folder, "r");
    try {
      await handle.sync();
    } finally {
      await handle.close();
    }
  } catch (error) {
    if (!["EISDIR", "EPERM", "EACCES", "EINVAL", "EBADF", "ENOTSUP"].includes(errorCode(error) ?? "")) throw error;
  }
}

/** The permissions of the file that will be replaced, or the usual ones. */
async function modeOf(path: string): Promise<number> {
  try {
    return (await stat(path)).mode & 0o777;
  } catch {
    return 0o666;
  }
}

/**
 * Writes a whole file or nothing: a temporary file beside it, flushed to the disk, then renamed over it.
 * A reader never sees half a file, and a failure leaves the old one as it was.
 * @throws the system's error; the temporary file is gone by then
 */
export async function writeAtomic(path: string, bytes: Uint8Array, disk: Disk = nodeDisk): Promise<void> {
  const folder = dirname(path);
  const temporary = join(folder, `.saving-${randomUUID()}.tmp`);
  try {
    const handle = await disk.open(temporary, "wx", await modeOf(path));
    try {
      await handle.writeFile(bytes);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await renamePatiently(temporary, path, disk);
  } catch (error) {
    await disk.rm(temporary, { force: true }).catch(() => undefined);
    throw error;
  }
  await syncFolder(folder, disk);
}

/** Removes what a power cut in the middle of a save left behind. Young files may belong to a save that is running. */
export async function sweepLeftovers(folder: string, now: Date): Promise<void> {
  for (const name of await readdir(folder)) {
    if (!LEFTOVER.test(name)) continue;
    const path = join(folder, name);
    const age = now.getTime() - (await stat(path)).mtimeMs;
    if (age > HOUR_MS) await rm(path, { force: true });
  }
}
