import { join } from "node:path";
import { ROOT } from "./stamps.mjs";

/**
 * The page carries only what it uses: every module of the project and of its packages may be left out when nothing of it is asked for.
 * Without this the doors of the core would bring the catalogue and the schemas along.
 */
const ONLY_WHAT_IS_USED = {
  name: "only-what-is-used",
  setup(build) {
    build.onResolve({ filter: /.*/ }, async ({ path, ...request }) => {
      if (request.pluginData === ONLY_WHAT_IS_USED || request.kind === "entry-point" || path.endsWith(".css")) return undefined;
      const found = await build.resolve(path, { ...request, pluginData: ONLY_WHAT_IS_USED });
      return found.errors.length > 0 ? found : { ...found, sideEffects: false };
    });
  },
};

/** The phone sheet's program and looks, each one file, as the exporter puts them into the page. */
export async function bundlePhoneSheet(folder = join(ROOT, "dist", "phone-sheet")) {
  const esbuild = await import("esbuild");
  await esbuild.build({
    absWorkingDir: ROOT, bundle: true, minify: true, platform: "browser", format: "iife", target: ["chrome91", "firefox91", "safari15"], charset: "utf8", legalComments: "none", logLevel: "silent",
    entryPoints: { page: "renderer/phone-sheet/main.ts" }, outdir: folder, plugins: [ONLY_WHAT_IS_USED],
  });
}
