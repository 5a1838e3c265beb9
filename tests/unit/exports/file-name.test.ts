import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { demoEpisode } from "../../../shared/episode";
import { DOCUMENT_IDS, EXPORTERS, exporterFor, fileNameFor } from "../../../shared/exports";

const named = (series: string, number: number | null, title: string) => ({ title, series: { name: series, number, coach: "", quiet: [] } });

describe("file names of documents", () => {
  it.each([
    [named("Strong for the Trail", 7, "Rows"), "strong-for-the-trail-7-shot-list.pdf"],
    [named("", 7, "Rows, presses, carries"), "rows-presses-carries-7-shot-list.pdf"],
    [named("Strong for the Trail", null, "Farmer's carry"), "strong-for-the-trail-farmers-carry-shot-list.pdf"],
    [named("Łódź: Größe & Øl", 1, ""), "lodz-grosse-ol-1-shot-list.pdf"],
    [named("", null, ""), "untitled-episode-shot-list.pdf"],
    [named("深蹲", null, "深蹲"), "episode-shot-list.pdf"],
    [named("../../etc", 2, ""), "etc-2-shot-list.pdf"],
  ])("%j is %s", (episode, name) => {
    expect(fileNameFor(episode, "shot-list.pdf")).toBe(name);
  });

  it("keeps the number when a long name is cut, and cuts between words", () => {
    const name = fileNameFor(named("strong and steady ".repeat(12), 104, ""), "voiceover.docx");
    expect(name).toMatch(/^(strong|steady|and|-)+-104-voiceover\.docx$/);
    expect(name.length).toBeLessThanOrEqual(80);
  });

  it("cuts the documents of one episode alike, so that they stand together in a folder", () => {
    const episode = named("a very long series name ".repeat(8), 9999, "");
    const stems = DOCUMENT_IDS.map((id) => fileNameFor(episode, id).replace(`-${id}`, ""));
    expect(new Set(stems).size).toBe(1);
  });

  it("is always a plain ASCII name of at most 80 characters", () => {
    const any = fc.string({ unit: "binary", maxLength: 200 });
    fc.assert(fc.property(any, any, fc.option(fc.integer({ min: 1, max: 10_000 })), fc.constantFrom(...DOCUMENT_IDS), (series, title, number, id) => {
      const name = fileNameFor(named(series, number, title), id);
      expect(name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*\.(pdf|docx|txt|vtt|srt|html)$/);
      expect(name.length).toBeLessThanOrEqual(80);
      expect(name.endsWith(`-${id}`)).toBe(true);
    }));
  });
});

describe("the list of documents", () => {
  it("has every id once, each found by its id", () => {
    const ids = EXPORTERS.map((exporter) => exporter.meta.id);
    expect([...ids].sort()).toEqual([...DOCUMENT_IDS].sort());
    for (const id of ids) expect(exporterFor(id).meta.id).toBe(id);
    for (const { meta } of EXPORTERS) expect(fileNameFor(demoEpisode, meta.id).endsWith(`.${meta.extension}`)).toBe(true);
  });
});
