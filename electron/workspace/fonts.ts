import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { FontFiles } from "../../shared/exports";

/** The faces the papers are set in. `build.mjs` copies the same files into dist/fonts. */
export const FONT_FILES: Readonly<Record<keyof FontFiles, readonly [pack: string, folder: string, file: string]>> = {
  regular: ["atkinson-hyperlegible-next", "400Regular", "AtkinsonHyperlegibleNext_400Regular.ttf"],
  semibold: ["atkinson-hyperlegible-next", "600SemiBold", "AtkinsonHyperlegibleNext_600SemiBold.ttf"],
  bold: ["atkinson-hyperlegible-next", "700Bold", "AtkinsonHyperlegibleNext_700Bold.ttf"],
  italic: ["atkinson-hyperlegible-next", "400Regular_Italic", "AtkinsonHyperlegibleNext_400Regular_Italic.ttf"],
  fallback: ["noto-sans", "400Regular", "NotoSans_400Regular.ttf"],
};

/** One face: from the app's own fonts folder, else, in a source tree that was not built yet, from the packages. */
async function face(name: keyof FontFiles, fonts: string): Promise<Uint8Array> {
  const [pack, folder, file] = FONT_FILES[name];
  try {
    return await readFile(join(fonts, file));
  } catch {
    return await readFile(join(fonts, "..", "..", "node_modules", "@expo-google-fonts", pack, folder, file)).catch((cause: unknown) => {
      throw new Error(`The typeface ${file} is missing from ${fonts}: install Repwright again.`, { cause });
    });
  }
}

/** All faces, read once. @param fonts - the app's fonts folder, dist/fonts */
export async function readFonts(fonts: string): Promise<FontFiles> {
  const [regular, semibold, bold, italic, fallback] = await Promise.all([
    face("regular", fonts), face("semibold", fonts), face("bold", fonts), face("italic", fonts), face("fallback", fonts),
  ]);
  return { regular, semibold, bold, italic, fallback };
}
