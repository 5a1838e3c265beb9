import type { mkdir } from "node:fs/promises";
import { stat } from "node:fs/promises";
import { dirname } from "node:path";
import { errorCode } from "./sentences";

const isFolder = (path: string): Promise<boolean> => stat(path).then((facts) => facts.isDirectory(), () => false);

/**
 * Makes a folder and those above it when they are missing. Node's own recursive mkdir answers "no such file" on a
 * disk that can only be read, and never returns on a file system that lets nobody make folders, such as /proc.
 * @returns whether it was missing
 * @throws the system's error for the folder that could not be made
 */
export async function makeFolder(path: string, disk: { readonly mkdir: typeof mkdir }): Promise<boolean> {
  if (await isFolder(path)) return false;
  try {
    await disk.mkdir(path);
    return true;
  } catch (error) {
    if (errorCode(error) === "EEXIST" && (await isFolder(path))) return false;
    const above = dirname(path);
    // Where the folder above was there all along, it is not what is missing.
    if (errorCode(error) !== "ENOENT" || above === path || !(await makeFolder(above, disk))) throw error;
    return makeFolder(path, disk);
  }
}
