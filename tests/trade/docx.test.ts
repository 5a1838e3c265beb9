import { describe, expect, it } from "vitest";
import mammoth from "mammoth";
import { countingIds, demoEpisode, emptyBlock, emptyEpisode, linesOf, newLine } from "../../shared/episode";
import { renderDocx } from "../../shared/exports/paper";
import { shotListPaper } from "../../shared/exports/shot-list";
import { voiceoverPaper } from "../../shared/exports/voiceover";

/**
 * The Word files opened by an independent reader of Office Open XML (ECMA-376), the `mammoth` package:
 * what it finds as headings, tables and words is what another program finds.
 */
const DAY = { paper: "a4", date: "2027-03-04" } as const;

async function read(paper: Parameters<typeof renderDocx>[0]): Promise<{ html: string; text: string; messages: readonly string[] }> {
  const buffer = Buffer.from((await renderDocx(paper, DAY)).bytes);
  const { value, messages } = await mammoth.convertToHtml({ buffer });
  const text = value.replace(/<\/(p|td|th|h\d|li)>/g, "\n").replace(/<[^>]+>/g, "").replace(/&lt;/g, "<").replace(/&gt;/g, ">").replace(/&quot;/g, '"').replace(/&amp;/g, "&").replace(/\u00a0/g, " ");
  return { html: value, text, messages: messages.map(({ message }) => message) };
}
const headings = (html: string, level: number): string[] => [...html.matchAll(new RegExp(`<h${level}>(.*?)</h${level}>`, "g"))].map(([, inner = ""]) => inner.replace(/<[^>]+>/g, ""));

describe("the shot list in Word's format, read by another program", () => {
  it("has one main heading a page, in the order of the session", async () => {
    const { html } = await read(shotListPaper(demoEpisode));
    expect(headings(html, 1)).toEqual(["Rows, presses, carries", ...demoEpisode.blocks.map((block) => block.title)]);
    expect(headings(html, 2)).toEqual(["Stations in order", "Before you leave: the closing shot", "Before you set up", "Not in any shot yet", "Before you leave: the closing shot"]);
  });

  it("has tables with heads, and a box to press for every set, shot, closing and piece of kit", async () => {
    const { html } = await read(shotListPaper(demoEpisode));
    // The stations in order, what no shot plans yet, and one table of marks for each block that has shots.
    expect(html.match(/<thead>/g)).toHaveLength(2 + demoEpisode.blocks.filter((block) => linesOf(block, "shot").length > 0).length);
    expect(html).toMatch(/<thead><tr><th>.*?mark.*?<\/th>.*?lens height.*?<\/thead>/);
    const boxes = shotListPaper(demoEpisode).sections.flatMap((section) => JSON.stringify(section).match(/"kind":"tickRow"|"type":"tick"/g) ?? []).length;
    expect(boxes).toBeGreaterThan(demoEpisode.session.kit.length);
    expect(html.match(/<input type="checkbox"/g)).toHaveLength(boxes);
  });

  it("holds what must be seen in every shot", async () => {
    const { text } = await read(shotListPaper(demoEpisode));
    for (const block of demoEpisode.blocks) {
      for (const { text: shot } of linesOf(block, "shot")) expect(text.toLowerCase()).toContain(shot.slice(shot.indexOf(": ") + 2).toLowerCase());
    }
  });

  it("is read without complaint but for names of styles that are our own", async () => {
    const { messages } = await read(shotListPaper(demoEpisode));
    expect([...new Set(messages)].sort()).toEqual(["Unrecognised paragraph style: 'Small tick box' (Style ID: SmallTick)", "Unrecognised paragraph style: 'Tick box' (Style ID: Tick)"]);
    const script = (await read(voiceoverPaper(demoEpisode))).messages.map((message) => /^Unrecognised paragraph style: '([^']+)'/.exec(message)?.[1] ?? message);
    expect([...new Set(script)].sort()).toEqual(["Block fit", "Block notes", "Overview", "Running time", "Runs over", "Seconds", "Shot", "Spoken words"]);
  });
});

describe("the voiceover script in Word's format, read by another program", () => {
  it("has every sentence that is said, word for word once the breath signs are taken out", async () => {
    const { text } = await read(voiceoverPaper(demoEpisode));
    const plain = (words: string): string => words.replace(/\s[/¦](?=\s)/g, "").replace(/\s+/g, " ").trim();
    const read1 = plain(text);
    for (const block of demoEpisode.blocks) {
      for (const line of linesOf(block, "say")) {
        for (const sentence of plain(line.text).split(/(?<=[.!?]) /)) expect(read1).toContain(sentence);
      }
    }
  });

  it("has a heading for every block and a table head over every script", async () => {
    const { html } = await read(voiceoverPaper(demoEpisode));
    expect(headings(html, 2).slice(2)).toEqual(demoEpisode.blocks.map((block, at) => `${at + 1}. ${block.title}`));
    expect(html.match(/<thead><tr><th>.*?<\/thead>/g)).toHaveLength(1 + demoEpisode.blocks.length);
    expect(html.match(/<thead><tr><th><p>(?:<strong>)?at(?:<\/strong>)?<\/p><\/th><th><p>(?:<strong>)?say/g)).toHaveLength(demoEpisode.blocks.length);
  });

  it("keeps signs and letters beyond ASCII", async () => {
    const newId = countingIds("d-");
    const words = "Łódź: ½ of 3 × 8 – é, ł and “quotes” <b>&amp; 30°";
    const { text } = await read(voiceoverPaper(emptyEpisode(newId, { title: words, blocks: [emptyBlock(newId, "talk", { title: words, lines: [newLine(newId, "say", words)] })] })));
    expect(text.split(words).length).toBeGreaterThanOrEqual(4);
  });
});
