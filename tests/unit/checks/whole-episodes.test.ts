import { describe, expect, it } from "vitest";
import { checkEpisode, RULES } from "../../../shared/checks";
import { contextOf, episodeOf } from "./rule-test";
import { WHOLE_EPISODES } from "./whole-episodes";

/** The language reader has its own corpus; here the rest of the book is tried. */
const BOOK = RULES.filter(({ meta }) => meta.id !== "no-unsafe-cue");
const checked = ({ script, fields }: (typeof WHOLE_EPISODES)[number]) => checkEpisode(contextOf(episodeOf(script, fields)), BOOK);
const good = WHOLE_EPISODES.filter(({ planted }) => planted.length === 0);
const slipped = WHOLE_EPISODES.filter(({ planted }) => planted.length > 0);

describe("a good episode", () => {
  it.each(good.map((episode) => [episode.name, episode] as const))("%s: nothing to mend and little to consider", (_name, episode) => {
    const findings = checked(episode);
    expect(findings.filter(({ level }) => level !== "consider").map(({ message }) => message)).toEqual([]);
    expect(findings.map(({ message }) => message).slice(3)).toEqual([]);
  });
});

describe("an episode with planted mistakes", () => {
  it.each(slipped.map((episode) => [episode.name, episode] as const))("%s: each is found, once where it stands", (_name, episode) => {
    const findings = checked(episode);
    expect(findings.map(({ rule }) => rule)).toEqual(expect.arrayContaining([...episode.planted]));
    const places = findings.filter(({ line, range }) => line !== null && range !== null).map(({ line, range }) => `${line} ${range?.start}`);
    expect(new Set(places).size).toBe(places.length);
  });
});
