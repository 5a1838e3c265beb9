import { existsSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";

const USUAL = { darwin: "Electron.app/Contents/MacOS/Electron", win32: "electron.exe" };

/**
 * Where Electron's runtime lies, or null. Only looks: loading the package itself would start a download.
 * ELECTRON_OVERRIDE_DIST_PATH names a folder with a runtime from elsewhere, as the package itself has it.
 */
export function electronRuntime({ env = process.env, platform = process.platform, exists = existsSync, read = (path) => readFileSync(path, "utf8"), packageFolder = electronFolder } = {}) {
  const folder = packageFolder();
  if (folder === null) return null;
  const named = join(folder, "path.txt");
  const program = exists(named) ? read(named).trim() : (USUAL[platform] ?? "electron");
  const override = env.ELECTRON_OVERRIDE_DIST_PATH;
  const runtime = join(override ? override : join(folder, "dist"), program);
  return exists(runtime) ? runtime : null;
}

/** The folder of the electron package; resolving its package.json runs none of its code. */
function electronFolder() {
  try {
    return dirname(createRequire(import.meta.url).resolve("electron/package.json"));
  } catch {
    return null;
  }
}
