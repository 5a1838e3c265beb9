import { existsSync } from "node:fs";
import { join } from "node:path";
import { StepFailed } from "./report.mjs";
import { run } from "./run.mjs";
import { ROOT, hashOf, readStamp, writeStamp } from "./stamps.mjs";

const MINIMUM = [20, 19];

/** A sentence when this Node is too old, else null. */
export function refuseOldNode(version) {
  const [major = 0, minor = 0] = version.replace(/^v/, "").split(".").map(Number);
  const enough = major > MINIMUM[0] || (major === MINIMUM[0] && minor >= MINIMUM[1]);
  return enough ? null : `Repwright needs Node ${MINIMUM.join(".")} or newer; this is ${version}.`;
}

/** Why packages must be installed, in words; null when they need not be. */
export function whyInstall({ hasPackages, lock, installed }) {
  if (!hasPackages) return "nothing was installed yet";
  return lock === installed ? null : "the list of packages changed";
}

/**
 * Installs exactly what package-lock.json names, when that is not there already. Electron's runtime is not
 * fetched: the desktop window uses it where it is present, everything else does without.
 */
export async function install({ root = ROOT, version = process.version, runNpm = (args, options) => run("npm", args, options) } = {}) {
  const old = refuseOldNode(version);
  if (old !== null) throw new StepFailed(old);
  const cache = join(root, ".cache");
  const lock = hashOf(["package-lock.json"], root);
  const why = whyInstall({ hasPackages: existsSync(join(root, "node_modules", "vite", "package.json")), lock, installed: readStamp("installed", cache) });
  if (why === null) return "packages are up to date";
  const result = await runNpm(["ci", "--no-audit", "--no-fund", "--loglevel=error"], { cwd: root, env: { ...process.env, ELECTRON_SKIP_BINARY_DOWNLOAD: "1" } });
  if (result.code !== 0) {
    throw new StepFailed("npm ci did not work, its words are above. With no network, or behind a proxy, set npm's registry first (npm config set registry ...), then run this again.", result.output);
  }
  writeStamp("installed", lock, cache);
  return `packages installed, because ${why}`;
}
