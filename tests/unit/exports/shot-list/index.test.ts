import { describe, expect, it } from "vitest";
import { countingIds, demoEpisode, emptyBlock, emptyEpisode } from "../../../../shared/episode";
import { DOCX_NOTES } from "../../../../shared/exports/paper";
import { shotListDocx, shotListPdf } from "../../../../shared/exports/shot-list";
import { DEFAULT_PACE } from "../../../../shared/speech";

const none = new Uint8Array();
const options = { paper: "a4", units: "kg", date: "2027-03-04", pace: DEFAULT_PACE, fonts: { regular: none, semibold: none, bold: none, italic: none, fallback: none } } as const;

describe("the shot list's exporters", () => {
  it("name their file format", () => {
    expect([shotListPdf.meta.id, shotListDocx.meta.id]).toEqual(["shot-list.pdf", "shot-list.docx"]);
    expect(shotListDocx.meta.mime).toBe("application/vnd.openxmlformats-officedocument.wordprocessingml.document");
  });

  it("tell the coach which blocks have no shot, and that the typeface is not inside", async () => {
    const { notes } = await shotListDocx.render(demoEpisode, options);
    expect(notes).toEqual(["No shot is planned for Closing; the shot list says so.", ...DOCX_NOTES]);
  });

  it("quote set lines that could not be read, and count them when there are many", async () => {
    const newId = countingIds("i-");
    const bad = (count: number) => emptyBlock(newId, "exercise", { title: "Press", sets: Array.from({ length: count }, () => ({ id: newId(), role: "working" as const, text: "some sets" })) });
    const few = await shotListDocx.render(emptyEpisode(newId, { blocks: [bad(1)] }), options);
    expect(few.notes).toContain('The set line "some sets" of Press could not be read: it has no rows to tick.');
    const many = await shotListDocx.render(emptyEpisode(newId, { blocks: Array.from({ length: 8 }, () => bad(1)) }), options);
    expect(many.notes).toContain("3 more set lines could not be read.");
    expect(many.notes).toContain("No shot is planned for Press, Press, Press, Press, Press and 3 more blocks; the shot list says so.");
  });
});
