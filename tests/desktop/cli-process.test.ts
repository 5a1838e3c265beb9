import { spawn, spawnSync, type SpawnSyncReturns } from "node:child_process";
import { chmodSync, closeSync, existsSync, mkdirSync, openSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import { beforeAll, describe, expect, it } from "vitest";
import { demoEpisode, writeEpisode } from "../../shared/episode";
import { temporaryFolder } from "./temporary-folder";

const root = temporaryFolder();
const cli = join(root, "electron", "cli.mjs");

/** The command line as its own process, where pipes, signals and the system's permissions are real. */
beforeAll(async () => {
  await build({
    entryPoints: ["electron/cli.ts"], bundle: true, platform: "node", format: "esm", outfile: cli, external: ["electron"], logLevel: "silent",
    banner: { js: 'import { createRequire as makeRequire } from "node:module"; const require = makeRequire(import.meta.url);' },
  });
  chmodSync(root, 0o755);
});

const repwright = (args: readonly string[], options: Parameters<typeof spawnSync>[2] = {}): SpawnSyncReturns<string> =>
  spawnSync(process.execPath, [cli, ...args], { ...options, encoding: "utf8" });

describe("the command line as a process", () => {
  it("prints the demo and exits with 0", () => {
    expect(repwright(["demo"])).toMatchObject({ status: 0, stdout: writeEpisode(demoEpisode), stderr: "" });
  });

  it("ends quietly when its reader has read enough", async () => {
    const child = spawn(process.execPath, [cli, "sets"], { stdio: ["pipe", "pipe", "pipe"] });
    let errors = "";
    child.stderr.on("data", (chunk: Buffer) => (errors += chunk.toString("utf8")));
    child.stdin.on("error", () => undefined);
    child.stdout.once("data", () => child.stdout.destroy());
    const feed = setInterval(() => child.stdin.write('{"id":1,"text":"3x5"}\n'.repeat(500)), 5);
    const code = await new Promise((resolve) => child.on("exit", resolve));
    clearInterval(feed);
    expect([code, errors]).toEqual([0, ""]);
  });

  it("ends the host when it is told to", async () => {
    const child = spawn(process.execPath, [cli, "serve", "--library", join(root, "library")], { stdio: ["ignore", "pipe", "pipe"] });
    const address = await new Promise<string>((resolve) => child.stdout.once("data", (chunk: Buffer) => resolve(chunk.toString("utf8").trim())));
    expect((await fetch(address, { redirect: "manual" })).status).toBe(303);
    child.kill("SIGTERM");
    const code = await new Promise((resolve) => child.on("exit", resolve));
    // Windows knows no such signal and ends the process itself.
    expect(code).toBe(process.platform === "win32" ? null : 0);
  });

  it("does not serve a library that is a file", () => {
    const file = join(root, "library.txt");
    writeFileSync(file, "words");
    const result = repwright(["serve", "--library", file], { timeout: 20_000 });
    expect(result).toMatchObject({ status: 2, stdout: "", stderr: "The host did not start: a part of its path is a file where a folder is needed.\n" });
  });

  it("says so when a folder may not be written to", () => {
    const closed = join(root, "closed");
    mkdirSync(closed, { mode: 0o555 });
    const target = join(closed, "demo.episode.json");
    // Root may write anywhere, so the attempt is made by somebody else.
    const result = repwright(["demo", "--to", target], process.getuid?.() === 0 ? { uid: 65_534, gid: 65_534 } : {});
    const refused = process.platform !== "win32";
    expect(result.status).toBe(refused ? 2 : 0);
    expect(result.stderr).toBe(refused ? `"${target}" was not written: this folder or file may not be changed or read by you. Choose another folder, or change its permissions.\n` : "");
    expect(existsSync(target)).toBe(!refused);
  });

  it("says so when the disk its output goes to is full", () => {
    const full = existsSync("/dev/full") ? openSync("/dev/full", "w") : null;
    const result = full === null ? repwright(["demo"]) : repwright(["demo"], { stdio: ["ignore", full, "pipe"] });
    if (full !== null) closeSync(full);
    expect([result.status, result.stderr]).toEqual(full === null ? [0, ""] : [2, "The output was not written: the disk is full. Free some space and try again.\n"]);
  });
});
