import { strFromU8, strToU8, unzipSync, zipSync, type Zippable } from "fflate";
import { FACE, TICK_FACE } from "./docx-units";

/** The zip format counts years from 1980; a fixed stamp, and the same in every time zone as it is told in local fields. */
const ZIP_DATE = new Date(1980, 0, 1);

const escapeXml = (text: string): string => text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");

/** Dates of the document's own properties (ECMA-376 part 2, core properties). */
function withDate(xml: string, date: string): string {
  const stamp = /^\d{4}-\d{2}-\d{2}$/.test(date) ? `${date}T00:00:00Z` : date;
  return xml.replace(/(<dcterms:(created|modified)[^>]*>)[^<]*/g, (_all, tag: string) => tag + escapeXml(stamp));
}

/** Drawings carry running ids and names ("Rectangle 7"); counted per part they no longer depend on what was written before. */
function withOwnIds(xml: string): string {
  let next = 0;
  return xml.replace(/(<(?:wp|wps|wpg):(?:docPr|cNvPr) )id="\d+" name="([^"]*?)(?: \d+)?"/g, (_all, tag: string, name: string) => {
    next += 1;
    return `${tag}id="${next}" name="${name} ${next}"`;
  });
}

/** A tick box as the character ☐ in its face, as Word itself writes it, instead of a symbol that other readers skip. */
function withRealTicks(xml: string): string {
  const face = ["ascii", "hAnsi", "eastAsia", "cs"].map((script) => ` w:${script}="${TICK_FACE}"`).join("");
  return xml.replace(/<w:r><w:sym w:char="2610"[^>]*\/><\/w:r>/g, `<w:r><w:rPr><w:rFonts${face}/></w:rPr><w:t>\u2610</w:t></w:r>`);
}

/** Says what may stand in for a face that is not installed (w:altName, w:panose1: a sans-serif of normal width). */
function withStandIn(xml: string): string {
  const font = `<w:font w:name="${FACE}"><w:altName w:val="Verdana"/><w:panose1 w:val="020B0604030504040204"/><w:charset w:val="00"/><w:family w:val="swiss"/><w:pitch w:val="variable"/></w:font>`;
  return xml.includes("</w:fonts>") ? xml.replace("</w:fonts>", `${font}</w:fonts>`) : xml.replace(/<w:fonts([^>]*)\/>/, (_all, attributes: string) => `<w:fonts${attributes}>${font}</w:fonts>`);
}

/** Characters XML 1.0 has no place for (clause 2.2): a reader refuses the whole file over one of them. */
 
const NOT_XML = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g;

/** What is made of a part, by its name. */
function settled(name: string, xml: string, date: string): string {
  if (name === "docProps/core.xml") return withDate(xml, date);
  if (name === "word/fontTable.xml") return withStandIn(xml);
  return /^word\/(document|header\d*|footer\d*)\.xml$/.test(name) ? withRealTicks(withOwnIds(xml)) : xml;
}

/**
 * The same package with everything that changes from run to run made to depend on its content: dates, ids, order and zip stamps.
 * @param date - ISO date written as created and modified
 */
export function settle(packed: Uint8Array, date: string): Uint8Array {
  const parts = unzipSync(packed);
  const out: Zippable = {};
  // Readers expect the list of content types first (ECMA-376 part 2, annex on zip order); the rest in plain order.
  const names = Object.keys(parts).sort((a, b) => Number(b === "[Content_Types].xml") - Number(a === "[Content_Types].xml") || (a < b ? -1 : 1));
  for (const name of names) {
    const bytes = parts[name] ?? new Uint8Array();
    out[name] = /\.(xml|rels)$/.test(name) ? strToU8(settled(name, strFromU8(bytes), date).replace(NOT_XML, "")) : bytes;
  }
  return zipSync(out, { mtime: ZIP_DATE, level: 6, os: 0 });
}
