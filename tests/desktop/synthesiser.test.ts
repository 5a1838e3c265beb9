import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, it, vi } from "vitest";

type Probes = Readonly<Record<string, unknown>>;
interface Script {
  findSynthesiser(probes: Probes): string | null;
  ensureSynthesiser(probes: Probes): Promise<string>;
}
const script = (await import(pathToFileURL(join(process.cwd(), "electron", "start-up", "synthesiser.mjs")).href)) as Script;

const linux = { env: { PATH: "/a:/b" }, platform: "linux", isRoot: true };
const apt = "/usr/bin/apt-get";

describe("the speech synthesiser of the tests", () => {
  it("is found on the PATH", () => {
    expect(script.findSynthesiser({ ...linux, exists: (path: string) => path === join("/b", "espeak-ng") })).toBe(join("/b", "espeak-ng"));
    expect(script.findSynthesiser({ ...linux, exists: () => false })).toBeNull();
  });

  it("is taken from the system's packages, the list brought up to date when it must be", async () => {
    let there = false;
    const runCommand = vi.fn(async (_command: string, args: readonly string[]) => {
      const again = runCommand.mock.calls.length > 2;
      there = again && args[0] === "install";
      return { code: there || args[0] === "update" ? 0 : 1, output: "" };
    });
    expect(await script.ensureSynthesiser({ ...linux, exists: (path: string) => path === apt || (there && path === join("/a", "espeak-ng")), runCommand })).toBe(join("/a", "espeak-ng"));
    expect(runCommand.mock.calls.map(([command, args]) => `${command} ${args[0] ?? ""}`)).toEqual(["apt-get install", "apt-get update", "apt-get install"]);
  });

  it.each<[string, Probes]>([
    ["no root", { isRoot: false, exists: (path: string) => path === apt }],
    ["no apt-get", { exists: () => false }],
    ["another system", { platform: "darwin", exists: (path: string) => path === apt }],
  ])("is done without where there is %s, and nothing is run", async (_where, probes) => {
    const runCommand = vi.fn();
    expect(await script.ensureSynthesiser({ ...linux, ...probes, runCommand })).toBe("not run here: no espeak-ng");
    expect(runCommand).not.toHaveBeenCalled();
  });

  it.each([
    ["fails", async () => ({ code: 100, output: "no network" })],
    ["throws", async () => { throw new Error("gone"); }],
  ])("is done without when the package manager %s", async (_how, runCommand) => {
    expect(await script.ensureSynthesiser({ ...linux, exists: (path: string) => path === apt, runCommand })).toBe("not run here: espeak-ng could not be had");
  });
});
