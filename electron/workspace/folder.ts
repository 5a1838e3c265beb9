import { existsSync } from "node:fs";
import { homedir } from "node:os";
import { join, resolve } from "node:path";

/**
 * The library folder: as asked for, or $REPWRIGHT_LIBRARY, or Repwright inside Documents,
 * or Repwright at home where there is no Documents.
 */
export function libraryFolder(
  asked: string | undefined,
  env: Readonly<Record<string, string | undefined>> = process.env,
  home: string = homedir(),
  exists: (path: string) => boolean = existsSync,
): string {
  const named = asked?.trim() || env["REPWRIGHT_LIBRARY"]?.trim();
  if (named) return resolve(named);
  const documents = join(home, "Documents");
  return exists(documents) ? join(documents, "Repwright") : join(home, "Repwright");
}
