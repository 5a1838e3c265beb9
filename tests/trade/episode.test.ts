import Ajv2020 from "ajv/dist/2020";
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { demoEpisode, episodeJsonSchema, writeEpisode } from "../../shared/episode";
import { anyEpisode } from "../unit/episode/arbitrary";

// Source: JSON Schema draft 2020-12, judged by the independent validator ajv.
describe("the published JSON Schema", () => {
  const ajv = new Ajv2020({ strict: false, validateFormats: false });
  const validate = ajv.compile(episodeJsonSchema());

  it("is the file that is published", () => {
    const published: unknown = JSON.parse(readFileSync(new URL("../../shared/episode/episode.schema.json", import.meta.url), "utf8"));
    expect(published).toEqual(episodeJsonSchema());
  });

  it("accepts every file the program writes", () => {
    expect(validate(JSON.parse(writeEpisode(demoEpisode)))).toBe(true);
    fc.assert(fc.property(anyEpisode, (episode) => {
      expect(validate(JSON.parse(writeEpisode(episode)))).toBe(true);
    }), { numRuns: 60 });
  });

  it("refuses what the program refuses: an unknown key, a wrong kind, a missing part", () => {
    const file = JSON.parse(writeEpisode(demoEpisode)) as Record<string, unknown>;
    expect(validate({ ...file, secret: 1 })).toBe(false);
    expect(validate({ ...file, blocks: [{}] })).toBe(false);
    expect(validate({ ...file, title: undefined })).toBe(false);
  });
});
