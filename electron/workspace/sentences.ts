/** A failure the screens act on: a code for the program, one sentence for people. */
export interface Problem {
  readonly ok: false;
  readonly code: string;
  readonly message: string;
}

export const problem = (code: string, message: string): Problem => ({ ok: false, code, message });

/** What each of the system's refusals means to somebody who only wanted to save a file. */
const CAUSES: Readonly<Record<string, readonly [code: string, cause: string]>> = {
  ENOSPC: ["disk-full", "the disk is full. Free some space and try again"],
  EDQUOT: ["disk-full", "your share of the disk is used up. Free some space and try again"],
  EFBIG: ["disk-full", "the disk does not take a file of this size"],
  EACCES: ["no-permission", "this folder or file may not be changed or read by you. Choose another folder, or change its permissions"],
  EPERM: ["no-permission", "the system does not allow it. Choose another folder, or change its permissions"],
  EROFS: ["read-only", "the disk can only be read. Choose a folder on another disk"],
  EBUSY: ["in-use", "another program has it open. Close it there and try again"],
  ETXTBSY: ["in-use", "another program has it open. Close it there and try again"],
  ENOENT: ["missing", "there is no such file or folder"],
  ENOTDIR: ["not-a-folder", "a part of its path is a file where a folder is needed"],
  EISDIR: ["not-a-file", "there is a folder of this name"],
  EEXIST: ["name-taken", "something of this name is already there"],
  ENAMETOOLONG: ["name-too-long", "the name is too long for this disk"],
  ELOOP: ["link-loop", "its link leads back to itself"],
  EMFILE: ["too-many-files", "too many files are open on this computer. Close a program and try again"],
  EIO: ["disk-fault", "the disk reported a fault. Save to another disk soon"],
};

/** The system's code of an error, or null when it has none. */
export function errorCode(error: unknown): string | null {
  return error instanceof Error && "code" in error && typeof error.code === "string" ? error.code : null;
}

/**
 * A failed disk operation in words.
 * @param what - what did not happen, as the start of a sentence: `"week-7.episode.json" was not saved`
 */
export function diskProblem(error: unknown, what: string): Problem {
  const code = errorCode(error);
  const known = code === null ? undefined : CAUSES[code];
  if (known) return problem(known[0], `${what}: ${known[1]}.`);
  const detail = code ?? (error instanceof Error ? error.message : String(error));
  return problem("disk-error", `${what}: the system answered "${detail}".`);
}
