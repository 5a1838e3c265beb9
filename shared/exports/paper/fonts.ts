import * as fontkit from "@cantoo/fontkit";
import { PDFHexString, type PDFDocument, type PDFFont } from "pdf-lib";
import type { FontFiles } from "../types";
import type { Paper, Weight } from "./tree";
import type { Styled } from "./text";

export type FaceName = keyof FontFiles;
/** "missing" is drawn as an empty square: no font has the character. */
export type Face = FaceName | "missing";

/** Figures of one width, so that numbers stand under each other. */
const FEATURES = { tnum: true } as const;
/** ISO 32000-1, 9.6.4: six capitals and a plus sign mark a subset. */
const NAMES: Readonly<Record<FaceName, string>> = {
  regular: "RWREGU+AtkinsonHyperlegibleNext-Regular",
  semibold: "RWSEMI+AtkinsonHyperlegibleNext-SemiBold",
  bold: "RWBOLD+AtkinsonHyperlegibleNext-Bold",
  italic: "RWITAL+AtkinsonHyperlegibleNext-Italic",
  fallback: "RWFALL+NotoSans-Regular",
};

/** Width of the square for a missing character, in ems. */
export const MISSING_EM = 0.66;
/** Joiners, variation selectors, soft hyphens: they draw nothing, so a font need not have them. */
const INVISIBLE = /(?:\p{Default_Ignorable_Code_Point})/gu;
const clusters = new Intl.Segmenter("en", { granularity: "grapheme" });

interface Glyphs {
  /** Codes of one glyph each, four hex digits. */
  readonly codes: readonly string[];
  /** How much narrower than its own width each glyph's step is, in thousandths of the size (ISO 32000-1, 9.4.3, TJ). */
  readonly tighten: readonly number[];
}

/** A word as it is set. Laying a word out is what costs time, and plans repeat their words. */
interface ShapedWord {
  readonly ems: number;
  readonly tighten: readonly number[];
  /** Filled when it is first drawn: only drawn glyphs belong to the subset. */
  codes: readonly string[] | null;
}

interface LoadedFace {
  readonly pdf: PDFFont;
  readonly kit: fontkit.Font;
  readonly has: ReadonlySet<number>;
  readonly words: Map<string, ShapedWord>;
}

/** The face for a weight; there is one italic, whatever the weight. */
export const faceOf = (weight: Weight, italic: boolean): FaceName => (italic ? "italic" : weight);

/** The fonts of one PDF: which face has a character, how wide a text is, and its glyphs. */
export class FontBook {
  /** Characters no font has, in order of appearance. */
  readonly missing = new Set<string>();
  private constructor(private readonly faces: Readonly<Partial<Record<FaceName, LoadedFace>>>) {}

  /** Embeds the faces this paper needs: the fallback and the italic only when something is set in them. */
  static async load(doc: PDFDocument, files: FontFiles, paper: Paper): Promise<FontBook> {
    doc.registerFontkit(fontkit);
    const source = JSON.stringify(paper);
    const faces: Partial<Record<FaceName, LoadedFace>> = {};
    const add = async (name: FaceName) => {
      const kit = openFont(files[name]);
      const pdf = await doc.embedFont(files[name], { subset: true, customName: NAMES[name], features: FEATURES });
      faces[name] = { pdf, kit, has: new Set(kit.characterSet), words: new Map() };
    };
    for (const name of ["regular", "semibold", "bold"] as const) await add(name);
    if (source.includes('"italic":true')) await add("italic");
    const text = faces.regular;
    if (text && Array.from(source.normalize("NFC")).some((char) => !text.has.has(char.codePointAt(0) ?? 0))) await add("fallback");
    return new FontBook(faces);
  }

  pdfFont(face: FaceName): PDFFont {
    return this.face(face).pdf;
  }

  /** Splits a text so that each part is wholly in one face; what no face has becomes "missing", one part each. */
  split(text: string, want: FaceName): { text: string; face: Face }[] {
    const clean = text.normalize("NFC");
    const first = this.face(want);
    if (covers(first, clean)) return [{ text: clean, face: want }];
    const fallback = this.faces.fallback;
    const parts: { text: string; face: Face }[] = [];
    for (const { segment } of clusters.segment(clean)) {
      const visible = segment.replace(INVISIBLE, "");
      if (visible === "") continue;
      const face: Face = covers(first, visible) ? want : fallback && covers(fallback, visible) ? "fallback" : "missing";
      if (face === "missing") this.missing.add(visible);
      const last = parts.at(-1);
      if (last && last.face === face && face !== "missing") last.text += visible;
      else parts.push({ text: visible, face });
    }
    return parts;
  }

  /** Width in points; kerned within words, not across spaces. */
  measure(text: string, face: Face, size: number): number {
    if (face === "missing") return MISSING_EM * size;
    const loaded = this.face(face);
    return wordsAndSpaces(text).reduce((sum, word) => sum + shape(loaded, word).ems, 0) * size;
  }

  /** The glyphs of a text, noted for the subset. */
  glyphs(text: string, face: FaceName): Glyphs {
    const loaded = this.face(face);
    const codes: string[] = [];
    const tighten: number[] = [];
    for (const word of wordsAndSpaces(text)) {
      const shaped = shape(loaded, word);
      shaped.codes ??= loaded.pdf.encodeText(word).asString().match(/.{4}/g) ?? [];
      codes.push(...shaped.codes);
      tighten.push(...shaped.tighten);
    }
    return { codes, tighten };
  }

  private face(name: FaceName): LoadedFace {
    const face = this.faces[name] ?? this.faces.regular;
    if (!face) throw new Error(`FontBook: the face "${name}" was not loaded`);
    return face;
  }
}

function openFont(bytes: Uint8Array): fontkit.Font {
  const font = fontkit.create(bytes);
  if (!("layout" in font)) throw new Error("FontBook: a font collection was given, expected one TTF font");
  return font;
}

const wordsAndSpaces = (text: string): string[] => text.split(/( )/).filter((part) => part !== "");

function shape({ kit, words }: LoadedFace, word: string): ShapedWord {
  const known = words.get(word);
  if (known) return known;
  const { glyphs, positions } = kit.layout(word, FEATURES);
  const steps = glyphs.map((glyph, i) => positions?.[i]?.xAdvance ?? glyph.advanceWidth);
  const shaped: ShapedWord = {
    ems: steps.reduce((sum, step) => sum + step, 0) / kit.unitsPerEm,
    tighten: glyphs.map((glyph, i) => ((glyph.advanceWidth - (steps[i] ?? glyph.advanceWidth)) * 1000) / kit.unitsPerEm),
    codes: null,
  };
  words.set(word, shaped);
  return shaped;
}

function covers(face: LoadedFace, text: string): boolean {
  for (const char of text) if (!face.has.has(char.codePointAt(0) ?? 0)) return false;
  return true;
}

/** A style the wrapper can measure: face, size and grey. Equal styles are one object, so that runs join. */
export interface TextStyle {
  readonly face: Face;
  readonly size: number;
  readonly grey: boolean;
}

export type StyledText = Styled<TextStyle>;

/** Hex string of several glyph codes. */
export const hexOf = (codes: readonly string[]): PDFHexString => PDFHexString.of(codes.join(""));
