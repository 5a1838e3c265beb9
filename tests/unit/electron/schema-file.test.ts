import { readFileSync } from "node:fs";
import { join } from "node:path";
import Ajv2020 from "ajv/dist/2020";
import { describe, expect, it } from "vitest";
import { demoEpisode, episodeJsonSchema, writeEpisode } from "../../../shared/episode";

const published: unknown = JSON.parse(readFileSync(join(process.cwd(), "shared", "episode", "episode.schema.json"), "utf8"));

describe("episode.schema.json", () => {
  it("is what the zod schema says (else run: node electron/start-up/schema.mjs)", () => {
    expect(published).toEqual(JSON.parse(JSON.stringify(episodeJsonSchema())));
  });

  it("lets another validator accept the demo and refuse a broken one", () => {
    const validate = new Ajv2020({ strict: false, validateFormats: false }).compile(published as object);
    const demo = JSON.parse(writeEpisode(demoEpisode)) as Record<string, unknown>;
    expect(validate(demo)).toBe(true);
    expect(validate({ ...demo, title: 7 })).toBe(false);
    expect(validate({ ...demo, extra: true })).toBe(false);
  });
});
