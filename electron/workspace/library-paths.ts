import { lstat, realpath } from "node:fs/promises";
import { isAbsolute, join, relative, sep } from "node:path";
import { episodeFileName } from "../../shared/bridge";
import { diskProblem, errorCode, problem, type Problem } from "./sentences";

/** Whether `path` is `folder` itself or lies below it. Both absolute, links already followed. */
export function isInside(folder: string, path: string): boolean {
  const steps = relative(folder, path);
  return steps === "" || (!isAbsolute(steps) && steps !== ".." && !steps.startsWith(`..${sep}`));
}

/**
 * Where a file of the library really is. Names that are no plain episode file name and links
 * that lead out of the library are refused; a file that does not exist yet is fine.
 */
export async function placeInLibrary(library: string, file: string): Promise<{ ok: true; path: string } | Problem> {
  const named = episodeFileName.safeParse(file);
  if (!named.success) return problem("bad-name", `"${file.slice(0, 80)}" is no name of an episode file: ${named.error.issues[0]?.message ?? "it is not allowed"}.`);
  const path = join(library, named.data);
  try {
    if (!(await lstat(path)).isSymbolicLink()) return { ok: true, path };
    const real = await realpath(path);
    if (isInside(await realpath(library), real)) return { ok: true, path: real };
    return problem("outside", `"${file}" is a link to a place outside the library; it is left alone.`);
  } catch (error) {
    if (errorCode(error) !== "ENOENT") return diskProblem(error, `"${file}" was not found`);
    // A link to nothing also ends here; writing through it could make a file anywhere.
    const dangling = await lstat(path).then(() => true, () => false);
    return dangling ? problem("outside", `"${file}" is a link to something that is not there; it is left alone.`) : { ok: true, path };
  }
}
