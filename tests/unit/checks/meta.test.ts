import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { RULES, SUBJECTS } from "../../../shared/checks";

const RULES_DIR = join(__dirname, "../../../shared/checks/rules");
const TESTS_DIR = join(__dirname, "rules");
const onDisk = SUBJECTS.flatMap((subject) => readdirSync(join(RULES_DIR, subject)).map((file) => ({ subject, id: file.replace(/\.ts$/, "") })));

describe("the rules on disk", () => {
  it("stand in the subject folders and nowhere else", () => {
    expect(readdirSync(RULES_DIR).sort()).toEqual([...SUBJECTS].sort());
  });

  it("are all registered, once, under the name of their file and the subject of their folder", () => {
    const registered = RULES.map(({ meta }) => `${meta.subject}/${meta.id}`);
    expect([...registered].sort()).toEqual(onDisk.map(({ subject, id }) => `${subject}/${id}`).sort());
    expect(new Set(RULES.map(({ meta }) => meta.id)).size).toBe(RULES.length);
  });

  it.each(onDisk.map(({ subject, id }) => [`${subject}/${id}`]))("%s has a test of the same name that runs the rule tester", (path) => {
    const test = readFileSync(join(TESTS_DIR, `${path}.test.ts`), "utf8");
    expect(test).toContain("ruleTest(");
    expect(test).toContain(`shared/checks/rules/${path}"`);
  });
});

describe("what each rule says about itself", () => {
  it.each(RULES.map((rule) => [rule.meta.id, rule] as const))("%s", (id, { meta }) => {
    expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
    expect(meta.version).toBeGreaterThanOrEqual(1);
    expect(meta.summary).toMatch(/^\p{Lu}.{15,}\.$/u);
    expect(meta.why).toMatch(/^\p{Lu}.{20,}\.$/u);
    expect(meta.why.split(/(?<=[.!?]) /).length, "one or two sentences").toBeLessThanOrEqual(2);
    expect(meta.source.title.length).toBeGreaterThan(10);
    expect(Object.keys(meta.messages).length).toBeGreaterThan(0);
    for (const message of Object.values(meta.messages)) expect(message).toMatch(/^[{"\p{Lu}].*\.$/u);
    for (const slot of Object.values(meta.messages).flatMap((message) => message.match(/\{[^}]*\}/g) ?? [])) expect(slot).toMatch(/^\{[a-z]\w*\}$/i);
  });
});
