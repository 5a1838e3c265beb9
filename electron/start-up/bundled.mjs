import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { ROOT } from "./stamps.mjs";

/**
 * What a TypeScript file of the project exports, for scripts that Node runs as they stand.
 * @param path - from the project's top: "shared/episode/index.ts"
 */
export async function bundled(path) {
  const esbuild = await import("esbuild");
  // Inside the project, so that its packages are found.
  const outfile = join(ROOT, ".cache", `${path.replace(/\.ts$/, "").replaceAll("/", "-")}.mjs`);
  await esbuild.build({ entryPoints: [join(ROOT, path)], bundle: true, platform: "node", format: "esm", packages: "external", outfile, logLevel: "error" });
  return import(pathToFileURL(outfile).href);
}
