import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { run } from "./run.mjs";

const MINUTE_MS = 60_000;

/** An open speech synthesiser on this computer (espeak-ng), or null. Tests measure our seconds against it where it is. */
export function findSynthesiser({ env = process.env, platform = process.platform, exists = existsSync } = {}) {
  const name = platform === "win32" ? "espeak-ng.exe" : "espeak-ng";
  return (env.PATH ?? "").split(delimiter).filter(Boolean).map((folder) => join(folder, name)).find((path) => exists(path)) ?? null;
}

/**
 * Finds the synthesiser, or gets it from the system's packages where that can be done without asking. Never throws: without it
 * the recorded durations are all that our seconds are held against, and the tests say so.
 * @returns its path, or why there is none
 */
export async function ensureSynthesiser({ isRoot = process.getuid?.() === 0, runCommand = run, ...probes } = {}) {
  const { env = process.env, platform = process.platform, exists = existsSync } = probes;
  const found = findSynthesiser(probes);
  if (found !== null) return found;
  if (platform !== "linux" || !isRoot || !exists("/usr/bin/apt-get")) return "not run here: no espeak-ng";
  const quiet = { timeoutMs: 3 * MINUTE_MS, env: { ...env, DEBIAN_FRONTEND: "noninteractive" } };
  const install = () => runCommand("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "espeak-ng"], quiet);
  try {
    if ((await install()).code !== 0) {
      await runCommand("apt-get", ["update", "-qq"], quiet);
      await install();
    }
  } catch {
    return "not run here: espeak-ng could not be had";
  }
  return findSynthesiser(probes) ?? "not run here: espeak-ng could not be had";
}
