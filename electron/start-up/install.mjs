import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { StepFailed } from "./report.mjs";
import { run } from "./run.mjs";
import { ROOT } from "./stamps.mjs";

const MINIMUM = [20, 19];

/** A sentence when this Node is too old, else null. */
export function refuseOldNode(version) {
  const [major = 0, minor = 0] = version.replace(/^v/, "").split(".").map(Number);
  const enough = major > MINIMUM[0] || (major === MINIMUM[0] && minor >= MINIMUM[1]);
  return enough ? null : `Repwright needs Node ${MINIMUM.join(".")} or newer; this is ${version}.`;
}

/** The packages of a lock file by path; null when the file is missing or no lock file. */
function lockedPackages(path) {
  try {
    return JSON.parse(readFileSync(path, "utf8")).packages ?? null;
  } catch {
    return null;
  }
}

/**
 * Why packages must be installed, in words; null when they need not be. Compares what the project asks for with
 * npm's own note of what it installed, so packages installed by hand count too.
 * Optional packages may be missing: they are for other systems.
 */
export function whyInstall(asked, installed) {

  if (installed === null) return "nothing was installed yet";
  const changed = Object.entries(asked).some(([path, { version, optional }]) => {
    const there = installed[path];
    return path !== "" && (there === undefined ? !optional : there.version !== version);
  });
  return changed ? "the list of packages changed" : null;
}

/**
 * Installs exactly what package-lock.json names, when that is not there already. Electron's runtime is not
 * fetched: the desktop window uses it where it is present, everything else does without.
 */
export async function install({ root = ROOT, version = process.version, runNpm = (args, options) => run("npm", args, options) } = {}) {
  const old = refuseOldNode(version);
  if (old !== null) throw new StepFailed(old);
  const asked = lockedPackages(join(root, "package-lock.json"));
  if (asked === null) throw new StepFailed("package-lock.json is missing or damaged; get it again from where you got Repwright.");
  const packages = join(root, "node_modules");
  const why = whyInstall(asked, existsSync(packages) ? lockedPackages(join(packages, ".package-lock.json")) : null);
  if (why === null) return "packages are up to date";
  const result = await runNpm(["ci", "--no-audit", "--no-fund", "--loglevel=error"], { cwd: root, env: { ...process.env, ELECTRON_SKIP_BINARY_DOWNLOAD: "1" } });
  if (result.code !== 0) {
    throw new StepFailed("npm ci did not work, its words are above. With no network, or behind a proxy, set npm's registry first (npm config set registry ...), then run this again.", result.output);
  }
  return `packages installed, because ${why}`;
}
