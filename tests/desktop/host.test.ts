import { mkdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { request as httpRequest } from "node:http";
import { connect } from "node:net";
import { networkInterfaces } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { demoEpisode } from "../../shared/episode";
import { startHost, type Host } from "../../electron/host";
import { openWorkspace, type Workspace } from "../../electron/workspace";
import { temporaryFolder } from "./temporary-folder";

const root = temporaryFolder();
const renderer = join(root, "renderer");
const library = join(root, "library");

let host: Host;
let workspace: Workspace;
let cookie = "";

interface Reply {
  readonly status: number;
  readonly headers: Record<string, string | string[] | undefined>;
  readonly body: string;
}

/** One raw request: unlike fetch it sends any Host, Origin and path as they are. */
function ask(method: string, path: string, headers: Record<string, string> = {}, body?: string | Buffer): Promise<Reply> {
  return new Promise((resolve, reject) => {
    const request = httpRequest({ host: "127.0.0.1", port: host.port, method, path, headers: { host: `127.0.0.1:${host.port}`, ...headers } }, (response) => {
      const chunks: Buffer[] = [];
      response.on("data", (chunk: Buffer) => chunks.push(chunk));
      response.on("end", () => resolve({ status: response.statusCode ?? 0, headers: response.headers, body: Buffer.concat(chunks).toString("utf8") }));
    });
    request.on("error", reject);
    request.end(body);
  });
}

const origin = (): string => `http://127.0.0.1:${host.port}`;
const get = (path: string, headers: Record<string, string> = {}): Promise<Reply> => ask("GET", path, { cookie, ...headers });
const callHeaders = (): Record<string, string> => ({ cookie, origin: origin(), "content-type": "application/json", "x-repwright": "1" });
const post = (channel: string, body: unknown, headers: Record<string, string> = {}): Promise<Reply> =>
  ask("POST", `/bridge/${channel}`, { ...callHeaders(), ...headers }, typeof body === "string" || Buffer.isBuffer(body) ? body : JSON.stringify(body));

beforeAll(async () => {
  mkdirSync(join(renderer, "assets"), { recursive: true });
  writeFileSync(join(renderer, "index.html"), "<title>screens</title>");
  writeFileSync(join(renderer, "assets", "app.js"), "export {};");
  writeFileSync(join(renderer, ".secret.json"), "{}");
  writeFileSync(join(root, "outside.txt"), "outside");
  symlinkSync(join(root, "outside.txt"), join(renderer, "link.txt"));
  workspace = openWorkspace({ library, fonts: join(process.cwd(), "dist", "fonts"), version: "1.2.3", window: "browser", start: "demo" });
  host = await startHost({ workspace, renderer });
  const entry = await ask("GET", new URL(host.address).pathname + new URL(host.address).search);
  cookie = String(entry.headers["set-cookie"]).split(";")[0] ?? "";
});
afterAll(() => host.close());

describe("coming in", () => {
  it("trades the address for a cookie that scripts cannot read and other sites cannot send", async () => {
    const entry = await ask("GET", `/?${new URL(host.address).searchParams.toString()}`);
    expect(entry).toMatchObject({ status: 303, headers: { location: "/" } });
    expect(String(entry.headers["set-cookie"])).toMatch(new RegExp(`^repwright-${host.port}=[\\w-]{43}; Path=/; HttpOnly; SameSite=Strict$`));
    expect(String(entry.headers["set-cookie"])).not.toContain(new URL(host.address).searchParams.get("token"));
  });

  it("opens with the cookie", async () => {
    expect(await get("/")).toMatchObject({ status: 200, body: "<title>screens</title>" });
  });

  it("has an address that is 256 random bits", () => {
    expect(host.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/\?token=[\w-]{43}$/);
  });

  it("opens once with an address for one use", async () => {
    const once = new URL(host.addressForOnce());
    expect(once.href).not.toBe(host.address);
    expect((await ask("GET", once.pathname + once.search)).status).toBe(303);
    expect((await ask("GET", once.pathname + once.search)).status).toBe(403);
    expect((await ask("GET", new URL(host.address).pathname + new URL(host.address).search)).status).toBe(303);
  });

  it.each([["/", ""], ["/?token=", ""], ["/?token=wrong", ""], ["/assets/app.js", ""], ["/bridge/events", ""], ["/", "repwright-1=x"]])("stays shut for %s with cookie %j", async (path, wrong) => {
    expect((await ask("GET", path, wrong ? { cookie: wrong } : {})).status).toBe(403);
  });

  it("stays shut for a guess of the right length", async () => {
    expect((await ask("GET", "/", { cookie: `repwright-${host.port}=${"A".repeat(43)}` })).status).toBe(403);
  });

  it("answers no other computer", async () => {
    const outside = Object.values(networkInterfaces()).flat().filter((net) => net && !net.internal && net.family === "IPv4").map((net) => net?.address ?? "");
    for (const address of [...outside, "127.0.0.2"]) {
      const reached = await new Promise<boolean>((resolve) => {
        const socket = connect({ host: address, port: host.port, timeout: 1000 }, () => resolve(true));
        socket.on("error", () => resolve(false));
        socket.on("timeout", () => resolve(false));
      });
      expect([address, reached]).toEqual([address, false]);
    }
  });

  it.each(["example.invalid", "127.0.0.1", "127.0.0.1:1", "localhost", "[::1]:80", "127.0.0.1.example.invalid"])("does not answer to the name %s", async (name) => {
    expect((await get("/", { host: name })).status).toBe(421);
  });

  it("answers to localhost", async () => {
    expect((await get("/", { host: `localhost:${host.port}` })).status).toBe(200);
  });
});

describe("files", () => {
  it.each(["/../outside.txt", "/%2e%2e/outside.txt", "/..%2foutside.txt", "/assets/../../outside.txt", "/assets/%2e%2e/%2e%2e/outside.txt", "/%252e%252e/outside.txt", "/..%5coutside.txt", "/link.txt", "/.secret.json", "/assets", "/missing.js", "/%00", "/%zz", "//etc/passwd", "/assets/app.js/"])("does not give out %s", async (path) => {
    const reply = await get(path);
    // A path's empty steps are dropped, so a slash at the end of a file's name changes nothing.
    if (path === "/assets/app.js/") expect(reply.body).toBe("export {};");
    else expect(reply).toMatchObject({ status: 404, body: "There is no such page.\n" });
  });

  it("come with the strict policy, their type, and no leave to keep or guess", async () => {
    const { headers } = await get("/assets/app.js");
    expect(headers).toMatchObject({ "content-type": "text/javascript; charset=utf-8", "x-content-type-options": "nosniff", "cache-control": "no-store", "referrer-policy": "no-referrer" });
    const policy = String(headers["content-security-policy"]).split("; ");
    for (const rule of ["default-src 'none'", "script-src 'self' 'wasm-unsafe-eval'", "connect-src 'self'", "frame-ancestors 'none'", "base-uri 'none'", "form-action 'none'"]) expect(policy).toContain(rule);
  });

  it("can be asked about with HEAD", async () => {
    expect(await ask("HEAD", "/", { cookie })).toMatchObject({ status: 200, body: "", headers: { "content-length": "22" } });
  });

  it.each(["PUT", "DELETE", "PATCH", "OPTIONS"])("refuses %s", async (method) => {
    expect((await ask(method, "/", { cookie, origin: origin() })).status).toBe(405);
  });
});

describe("calls", () => {
  it("are answered", async () => {
    const reply = await post("app:about", {});
    expect(reply.status).toBe(200);
    expect(JSON.parse(reply.body)).toEqual({ answer: { version: "1.2.3", window: "browser", library, start: "demo" } });
  });

  it("save, open and refuse as values", async () => {
    const file = "host.episode.json";
    expect(JSON.parse((await post("episode:save", { file, episode: demoEpisode, basedOn: null })).body)).toMatchObject({ answer: { ok: true } });
    expect(JSON.parse((await post("episode:open", { file })).body)).toMatchObject({ answer: { ok: true, episode: demoEpisode } });
    expect(JSON.parse((await post("episode:open", { file: "none.episode.json" })).body)).toMatchObject({ answer: { ok: false, code: "missing" } });
    expect(JSON.parse(readFileSync(join(library, file), "utf8"))).toEqual(demoEpisode);
  });

  it.each<[string, Record<string, string>]>([
    ["another site's page", { origin: "https://example.invalid" }],
    ["another port of this computer", { origin: "http://127.0.0.1:1" }],
    ["a page without origin", { origin: "null" }],
    ["a form, which cannot set our header", { "x-repwright": "" }],
    ["a site the browser calls foreign", { "sec-fetch-site": "cross-site" }],
    ["somebody without the cookie", { cookie: "" }],
  ])("from %s are refused", async (_who, headers) => {
    expect((await post("app:about", {}, headers)).status).toBe(403);
  });

  it("without any Origin are refused", async () => {
    const { origin: _origin, ...headers } = callHeaders();
    expect((await ask("POST", "/bridge/app:about", headers, "{}")).status).toBe(403);
  });

  it.each<[string, string, unknown, Record<string, string>, number, RegExp]>([
    ["an unknown channel", "shell:run", {}, {}, 404, /nothing called "shell:run"/],
    ["a channel of every object", "constructor", {}, {}, 404, /nothing called "constructor"/],
    ["a wrong shape", "episode:open", { file: 7 }, {}, 400, /at file: /],
    ["a path as file", "episode:open", { file: "../../x.episode.json" }, {}, 400, /at file: /],
    ["an episode with an unknown key", "episode:save", { file: "a.episode.json", basedOn: null, episode: { ...demoEpisode, extra: 1 } }, {}, 400, /at episode: /],
    ["no JSON", "app:about", "{", {}, 400, /not readable JSON/],
    ["nothing", "app:about", "", {}, 400, /not readable JSON/],
    ["a form's type", "app:about", "{}", { "content-type": "text/plain" }, 415, /application\/json/],
    ["more than 10 MB", "app:about", Buffer.alloc(10 * 1024 * 1024 + 1, 0x20), {}, 413, /at most 10 MB/],
  ])("with %s are refused with a sentence", async (_what, channel, body, headers, status, sentence) => {
    const reply = await post(channel, body, headers);
    expect(reply.status).toBe(status);
    expect((JSON.parse(reply.body) as { error: string }).error).toMatch(sentence);
  });

  it("that hide their size are cut off at the limit", async () => {
    const reply = await new Promise<number>((resolve, reject) => {
      const request = httpRequest({ host: "127.0.0.1", port: host.port, method: "POST", path: "/bridge/app:about", headers: { ...callHeaders(), host: `127.0.0.1:${host.port}`, "transfer-encoding": "chunked" } }, (response) => resolve(response.statusCode ?? 0));
      request.on("error", reject);
      const block = Buffer.alloc(1024 * 1024, 0x20);
      for (let i = 0; i < 11; i++) request.write(block);
    });
    expect(reply).toBe(413);
  });

  it("are asked with POST", async () => {
    expect((await get("/bridge/app:about")).status).toBe(405);
    expect((await ask("POST", "/", callHeaders(), "{}")).status).toBe(405);
  });

  it("whose handler gives an answer of the wrong shape are a failure, not an answer", async () => {
    const broken: Workspace = { ...workspace, handlers: { ...workspace.handlers, "papers:cancel": () => Promise.resolve({ cancelled: "yes" } as unknown as { cancelled: boolean }) } };
    const { answerCall } = await import("../../electron/answer-call");
    await expect(answerCall(broken.handlers, "papers:cancel", { job: "j" })).rejects.toThrow("The answer to papers:cancel came out wrong, at cancelled: ");
  });
});

describe("events", () => {
  it("reach the page as server-sent events", async () => {
    const text = await new Promise<string>((resolve, reject) => {
      let heard = "";
      const request = httpRequest({ host: "127.0.0.1", port: host.port, path: "/bridge/events", headers: { host: `127.0.0.1:${host.port}`, cookie } }, (response) => {
        expect(response.headers["content-type"]).toBe("text/event-stream; charset=utf-8");
        response.on("data", (chunk: Buffer) => {
          heard += chunk.toString("utf8");
          if (heard.includes("listening") && !heard.includes("event:")) void post("papers:export", { job: "j9", episode: demoEpisode, documents: ["handout.pdf"], paper: "a4", units: "kg" });
          if (heard.includes('"document":null')) {
            request.destroy();
            resolve(heard);
          }
        });
      });
      request.on("error", (error) => (heard.includes('"document":null') ? resolve(heard) : reject(error)));
      request.end();
    });
    expect(text).toContain('event: papers:progress\ndata: {"job":"j9","done":0,"total":1,"document":"handout.pdf"}\n\n');
  });
});

describe("closing", () => {
  it("frees the port", async () => {
    const second = await startHost({ workspace: openWorkspace({ library, fonts: "", version: "1", window: "browser", start: null }), renderer });
    await expect(startHost({ workspace, renderer, port: second.port })).rejects.toThrow(/EADDRINUSE/);
    await second.close();
    const third = await startHost({ workspace: openWorkspace({ library, fonts: "", version: "1", window: "browser", start: null }), renderer, port: second.port });
    await third.close();
    expect(third.port).toBe(second.port);
  });
});
