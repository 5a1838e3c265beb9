import { readFile, realpath, stat } from "node:fs/promises";
import { extname, join } from "node:path";
import { isInside } from "./workspace/library-paths";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".mjs": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".ico": "image/x-icon",
  ".woff2": "font/woff2",
  ".ttf": "font/ttf",
  ".wasm": "application/wasm",
  ".txt": "text/plain; charset=utf-8",
};

/**
 * The names along a URL's path, or null when it tries to leave the folder. The path is decoded once,
 * so an encoded slash or dot is judged as what it stands for and a twice encoded one is just an odd name.
 */
export function pathSteps(urlPath: string): string[] | null {
  let decoded: string;
  try {
    decoded = decodeURIComponent(urlPath);
  } catch {
    return null;
  }
   
  if (/[\\\u0000-\u001f:]/.test(decoded)) return null;
  const steps = decoded.split("/").filter((step) => step !== "");
  return steps.some((step) => step.startsWith(".")) ? null : steps;
}

/**
 * A file of the built screens, "/" being index.html. Null for everything else, be it missing, hidden,
 * a folder or outside `root`, also through a link.
 */
export async function readStatic(root: string, urlPath: string): Promise<{ readonly bytes: Buffer<ArrayBuffer>; readonly type: string } | null> {
  const steps = pathSteps(urlPath);
  if (!steps) return null;
  try {
    const path = await realpath(join(root, ...(steps.length === 0 ? ["index.html"] : steps)));
    const type = TYPES[extname(path).toLowerCase()];
    if (type === undefined || !isInside(await realpath(root), path) || !(await stat(path)).isFile()) return null;
    return { bytes: await readFile(path), type };
  } catch {
    return null;
  }
}
