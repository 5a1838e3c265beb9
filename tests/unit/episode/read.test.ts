import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { EPISODE_VERSION, MAX_FILE_BYTES, demoEpisode, readEpisode, writeEpisode } from "../../../shared/episode";
import { anyEpisode } from "./arbitrary";

const demo = writeEpisode(demoEpisode);
const changed = (change: (file: Record<string, unknown>) => void): string => {
  const file = JSON.parse(demo) as Record<string, unknown>;
  change(file);
  return JSON.stringify(file);
};
const message = (source: string): string => {
  const read = readEpisode(source);
  return read.ok ? "read" : `${read.code}: ${read.message}`;
};

describe("readEpisode", () => {
  it("reads what writeEpisode wrote, byte for byte the same the second time", () => {
    const read = readEpisode(demo);
    expect(read).toEqual({ ok: true, episode: demoEpisode, migratedFrom: null });
    expect(read.ok && writeEpisode(read.episode)).toBe(demo);
  });

  it("reads a file that begins with a byte order mark or has Windows line ends", () => {
    expect(readEpisode(`\uFEFF${demo}`).ok).toBe(true);
    expect(readEpisode(demo.replaceAll("\n", "\r\n")).ok).toBe(true);
  });

  it.each([
    ["nothing", "", "empty: The file is empty."],
    ["only spaces", " \n\t", "empty: The file is empty."],
    ["half a file", demo.slice(0, 900), /^not-json: The file is not readable JSON: it breaks at line \d+, column \d+\.$/],
    ["prose", "Dear diary", "not-json: The file is not readable JSON: it breaks at line 1, column 1."],
    ["a word where a value should be", '{\n  "format": repwright\n}\n', "not-json: The file is not readable JSON: it breaks at line 2, column 13."],
    ["a comma too many", '{"a":1,}', "not-json: The file is not readable JSON: it breaks at line 1, column 8."],
    ["a list", "[]", 'not-an-episode: This is JSON but not an episode: "format" should be "repwright-episode" at the top.'],
    ["null", "null", /^not-an-episode/],
    ["another format", '{"format":"something-else","version":1}', /^not-an-episode/],
    ["a newer version", changed((f) => { f["version"] = EPISODE_VERSION + 1; }), `newer-version: The file has version ${EPISODE_VERSION + 1}; this program reads up to ${EPISODE_VERSION}. Open it with a newer Repwright.`],
    ["a version in words", changed((f) => { f["version"] = "two"; }), `bad-value: At version: expected a whole number from 1 to ${EPISODE_VERSION}.`],
    ["no title", changed((f) => { delete f["title"]; }), "bad-value: At title: expected string, received undefined."],
    ["an unknown key", changed((f) => { f["secret"] = 1; }), /^bad-value: At the top: unrecognized key: "secret"\.$/],
    ["a wrong kind of line", demo.replace('"kind": "cue"', '"kind": "hint"'), /^bad-value: At blocks\[1\]\.lines\[0\]\.kind: /],
    ["a line break in a line", demo.replace("Soft knees, ribs over hips", "Soft knees\\nribs over hips"), /^bad-value: At blocks\[6\]\.lines\[1\]\.text: expected one line of text without control characters\.$/],
    ["the same id twice", changed((f) => { const blocks = f["blocks"] as { id: string }[]; blocks[1]!.id = blocks[0]!.id; }), /^bad-value: At blocks: the id "demo-\d+" is used twice/],
    ["an id that climbs out", changed((f) => { (f["blocks"] as { id: string }[])[0]!.id = "../../etc"; }), /^bad-value: At blocks\[0\]\.id: expected 1 to 64 letters, digits, - or _\.$/],
    ["a hundred thousand blocks", changed((f) => { f["blocks"] = new Array(100_000).fill({}); }), "bad-value: At blocks: 100000 blocks, at most 400 are read."],
  ])("refuses %s with the place", (_name, source, expected) => {
    expect(message(source)).toMatch(expected);
  });

  it("refuses a file that is too big before reading it", () => {
    expect(message(" ".repeat(MAX_FILE_BYTES + 1))).toBe("too-big: The file is 8 MB; an episode is at most 8 MB.");
  });

  it("is not fooled by keys that reach for a prototype", () => {
    expect(readEpisode('{"format":"repwright-episode","version":2,"__proto__":{"polluted":true}}').ok).toBe(false);
    expect(({} as Record<string, unknown>)["polluted"]).toBeUndefined();
    expect(readEpisode(demo.replace('"title"', '"__proto__": {"polluted": 1}, "title"')).ok).toBe(false);
  });

  it("keeps hostile words as words", () => {
    const read = readEpisode(demo.replace("Soft knees, ribs over hips", "<script>alert(1)</script>"));
    expect(read.ok && read.episode.blocks[6]?.lines[1]?.text).toBe("<script>alert(1)</script>");
  });

  it("never throws, whatever it is given", () => {
    fc.assert(fc.property(fc.oneof(fc.string(), fc.json(), fc.anything().map((value) => String(JSON.stringify(value)))), (source) => {
      expect(typeof readEpisode(source).ok).toBe("boolean");
    }));
  });

  it("survives any single change to a good file", () => {
    fc.assert(fc.property(anyEpisode, fc.nat(), fc.string({ maxLength: 3 }), (episode, at, put) => {
      const source = writeEpisode(episode);
      const cut = at % source.length;
      expect(typeof readEpisode(source.slice(0, cut) + put + source.slice(cut + 1)).ok).toBe("boolean");
    }));
  });
});
