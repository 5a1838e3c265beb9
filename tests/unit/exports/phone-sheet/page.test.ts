import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { applyEdits, demoEpisode } from "../../../../shared/episode";
import { EXPORTERS, exporterFor, phoneSession } from "../../../../shared/exports";
import { DEFAULT_PACE } from "../../../../shared/speech";
import { fonts } from "../paper/kit";

const exporter = exporterFor("phone-sheet.html");
const page = { script: 'const end = "</script><!--";\nstart(end)', style: "body { color: red } /* </style> */" };
const options = { paper: "a4", units: "kg", fonts, pace: DEFAULT_PACE, date: "2027-03-04", page } as const;
const htmlOf = async (episode = demoEpisode): Promise<string> => new TextDecoder().decode((await exporter.render(episode, options)).bytes);
const between = (html: string, start: string, end: string): string => html.slice(html.indexOf(start) + start.length, html.indexOf(end, html.indexOf(start) + start.length));
const hash = (text: string): string => `'sha256-${createHash("sha256").update(text).digest("base64")}'`;

describe("the phone sheet's file", () => {
  it("is one of the documents, and the same episode gives the same bytes", async () => {
    expect(EXPORTERS).toContain(exporter);
    expect(await htmlOf()).toBe(await htmlOf(structuredClone(demoEpisode)));
  });

  it("lets its own program and looks run, by their hash, and nothing else", async () => {
    const html = await htmlOf();
    const policy = between(html, 'http-equiv="Content-Security-Policy" content="', '"');
    const script = between(html, "</script>\n<script>", "</script>");
    const style = between(html, "<style>", "</style>");
    expect(policy).toBe(`default-src 'none'; script-src ${hash(script)}; style-src ${hash(style)}; base-uri 'none'; form-action 'none'`);
    expect(policy).not.toContain("unsafe");
  });

  it("names no address that could be loaded", async () => {
    expect((await htmlOf()).replace(page.script, "")).not.toMatch(/(?:src|href)=|url\(|@import|https?:|\/\/[a-z]/i);
  });

  it("keeps every word of the session, however it is written, and lets none of it end the script", async () => {
    const words = '</script><script>alert(1)</script> <!-- \u00e9 & "quoted" \' <b>';
    const block = demoEpisode.blocks[2]?.id ?? "";
    const episode = applyEdits(demoEpisode, [{ type: "set-title", title: words }, { type: "insert-line", block, at: null, line: { id: "odd", kind: "shot", text: `Side, full: ${words}` } }]);
    const html = await htmlOf(episode);
    const data = between(html, '<script type="application/json" id="session">', "</script>");
    expect(JSON.parse(data)).toEqual(JSON.parse(JSON.stringify(phoneSession(episode))));
    expect(html.match(/<script/gi)).toHaveLength(2);
    expect(html).not.toContain("<b>");
    expect(data).not.toMatch(/[<>&\u2028\u2029]/);
  });

  it("tells the plan in plain words where no program runs", async () => {
    const plain = between(await htmlOf(), "<noscript>", "</noscript>");
    expect(plain).toMatch(/Chest-supported row, incline bench<\/h2><ul><li>Side, full: the whole arm path and the chest on the pad, 20 s; A, [\d.]+ m away, [\d.]+ m high<\/li>/);
    expect(plain).toContain("Open the file in a browser.");
  });

  it("needs its page handed in, and says why another unit changes nothing", async () => {
    const { page: _page, ...without } = options;
    await expect(exporter.render(demoEpisode, without)).rejects.toThrow("script and style were not handed in");
    expect((await exporter.render(demoEpisode, { ...options, units: "lb" })).notes).toEqual(["The phone sheet counts in the session's own unit, for what is typed there goes back into it."]);
  });
});
