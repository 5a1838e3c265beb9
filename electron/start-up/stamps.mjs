import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, readdirSync, statSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";

/** The top folder of the project. */
export const ROOT = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
/** What start-up remembers between runs; safe to delete. */
export const CACHE = join(ROOT, ".cache");

function filesUnder(path) {
  if (!existsSync(path)) return [];
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path).sort().flatMap((name) => filesUnder(join(path, name)));
}

/** One hash over names and contents of files and folders, given as paths below `root`. Missing ones count as missing. */
export function hashOf(paths, root = ROOT) {
  const hash = createHash("sha256");
  for (const path of paths) {
    hash.update(`${path}\0`);
    for (const file of filesUnder(join(root, path))) hash.update(`${relative(root, file)}\0`).update(readFileSync(file)).update("\0");
  }
  return hash.digest("hex");
}

/** What was written under this name the last time; null when nothing was. */
export function readStamp(name, cache = CACHE) {
  try {
    return readFileSync(join(cache, name), "utf8").trim();
  } catch {
    return null;
  }
}

export function writeStamp(name, value, cache = CACHE) {
  mkdirSync(cache, { recursive: true });
  writeFileSync(join(cache, name), `${value}\n`);
}
