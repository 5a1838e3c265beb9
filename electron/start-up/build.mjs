import { copyFileSync, cpSync, existsSync, mkdirSync, rmSync } from "node:fs";
import { basename, join } from "node:path";
import { pathToFileURL } from "node:url";
import { install } from "./install.mjs";
import { bundlePhoneSheet } from "./phone-sheet.mjs";
import { StepFailed, step } from "./report.mjs";
import { ROOT, hashOf, readStamp, writeStamp } from "./stamps.mjs";

const SOURCES = ["package.json", "package-lock.json", "vite.config.ts", "tsconfig.json", "electron", "renderer", "shared"];
const DIST = join(ROOT, "dist");

/** Everything a build leaves; when one is missing the build is done again. */
const OUTPUTS = ["electron/main.cjs", "electron/preload.cjs", "electron/cli.mjs", "electron/serve.mjs", "renderer/index.html", "phone-sheet/page.js", "phone-sheet/page.css", "fonts/AtkinsonHyperlegibleNext_400Regular.ttf"];

/** The typefaces of the papers, with the licence each came under. */
const FONTS = [
  ["atkinson-hyperlegible-next", ["400Regular", "600SemiBold", "700Bold", "400Regular_Italic"]],
  ["noto-sans", ["400Regular"]],
];

function copyFonts() {
  const target = join(DIST, "fonts");
  mkdirSync(target, { recursive: true });
  for (const [pack, faces] of FONTS) {
    const from = join(ROOT, "node_modules", "@expo-google-fonts", pack);
    const family = pack.split("-").map((word) => word.charAt(0).toUpperCase() + word.slice(1)).join("");
    for (const face of faces) copyFileSync(join(from, face, `${family}_${face}.ttf`), join(target, `${family}_${face}.ttf`));
    cpSync(join(from, "LICENSE_FONT"), join(target, `${family}-LICENSE.txt`));
  }
}

/** CommonJS packages inside a module bundle may call `require`, which modules do not have. */
const MODULE_BANNER = { js: 'import { createRequire as makeRequire } from "node:module"; const require = makeRequire(import.meta.url);' };

/** Everything that runs on Node, bundled: the desktop app as CommonJS, which its sandboxed preload must be, the rest as modules. */
async function bundleNode() {
  const esbuild = await import("esbuild");
  const common = { bundle: true, platform: "node", target: "node20.19", external: ["electron"], logLevel: "silent", absWorkingDir: ROOT, legalComments: "none", minifySyntax: true, minifyWhitespace: true, define: { "process.env.NODE_ENV": '"production"' } };
  await Promise.all([
    esbuild.build({ ...common, format: "cjs", entryPoints: ["electron/main.ts"], outfile: "dist/electron/main.cjs" }),
    esbuild.build({ ...common, format: "cjs", entryPoints: ["electron/preload.ts"], outfile: "dist/electron/preload.cjs" }),
    // Split, so that a command loads only what it needs.
    esbuild.build({
      ...common, format: "esm", splitting: true, banner: MODULE_BANNER, entryPoints: { cli: "electron/cli.ts", serve: "electron/serve.ts" },
      outdir: "dist/electron", outExtension: { ".js": ".mjs" }, chunkNames: "parts/[name]-[hash]",
    }),
  ]);
}

async function bundleScreens() {
  const vite = await import("vite");
  await vite.build({ root: join(ROOT, "renderer"), configFile: join(ROOT, "vite.config.ts"), logLevel: "silent" });
}

/** Builds dist/ when a source changed since it was built. */
export async function build() {
  const sources = hashOf(SOURCES);
  if (readStamp("built") === sources && OUTPUTS.every((output) => existsSync(join(DIST, output)))) return "nothing changed since the last build";
  try {
    rmSync(join(DIST, "electron"), { recursive: true, force: true });
    await Promise.all([bundleNode(), bundleScreens(), bundlePhoneSheet()]);
    copyFonts();
  } catch (error) {
    throw new StepFailed("the sources do not build, see above.", error instanceof Error ? error.message : String(error));
  }
  for (const output of OUTPUTS) if (!existsSync(join(DIST, output))) throw new StepFailed(`${basename(output)} was not made.`);
  writeStamp("built", sources);
  return "screens, desktop, command line and host built";
}

// What the tools print is read in logs as well as in terminals.
if (!process.stdout.isTTY) process.env.NO_COLOR ??= "1";

// `npm run build`
if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  try {
    await step("install", install);
    await step("build", build);
  } catch {
    process.exitCode = 1;
  }
}
