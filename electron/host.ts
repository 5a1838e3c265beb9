import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { CallRefused, answerCall } from "./answer-call";
import { readJson } from "./host/body";
import { cookieValue, hostNames, newSecret, refuseStranger, sameSecret } from "./host/door";
import { streamEvents } from "./host/events";
import { PAGE_HEADERS } from "./page-policy";
import { readStatic } from "./static-files";
import type { Workspace } from "./workspace";

export interface HostSetup {
  readonly workspace: Workspace;
  /** Folder of the built screens. */
  readonly renderer: string;
  /** 0 or nothing takes a free one. */
  readonly port?: number;
}

export interface Host {
  /** The address that opens the app; it holds the secret. */
  readonly address: string;
  readonly port: number;
  /** An address that opens the app once. For a program's command line, which other people on this computer can read. */
  readonly addressForOnce: () => string;
  readonly close: () => Promise<void>;
}

const LOOPBACK = "127.0.0.1";
const CALL_PATH = "/bridge/";

/** One running host: what its handlers need to know. */
interface Running extends HostSetup {
  readonly port: number;
  /** In the printed address; trades for the cookie. */
  readonly token: string;
  /** Tokens that may be used once more. */
  readonly onceTokens: Set<string>;
  /** In the cookie. Cookies are shared between ports, so its name carries the port. */
  readonly session: string;
}

function send(request: IncomingMessage, response: ServerResponse, status: number, type: string, body: Buffer | string, extra: Record<string, string> = {}): void {
  const bytes = Buffer.from(body);
  response.writeHead(status, { ...PAGE_HEADERS, "content-type": type, "content-length": String(bytes.length), ...extra });
  response.end(request.method === "HEAD" ? undefined : bytes);
}

const sendText = (request: IncomingMessage, response: ServerResponse, status: number, message: string, extra?: Record<string, string>): void =>
  send(request, response, status, "text/plain; charset=utf-8", `${message}\n`, extra);

const sendJson = (request: IncomingMessage, response: ServerResponse, status: number, value: unknown, extra?: Record<string, string>): void =>
  send(request, response, status, "application/json; charset=utf-8", JSON.stringify(value), extra);

/** Whether a token opens the app; one for a single use is spent by that. */
function opens(running: Running, token: string | null): boolean {
  if (sameSecret(token, running.token)) return true;
  const once = [...running.onceTokens].find((secret) => sameSecret(token, secret));
  return once !== undefined && running.onceTokens.delete(once);
}

async function answerBridge(running: Running, request: IncomingMessage, response: ServerResponse, channel: string): Promise<void> {
  if (request.headers["x-repwright"] !== "1") return sendJson(request, response, 403, { error: "Requests from other pages are refused." });
  const body = await readJson(request);
  if ("status" in body) {
    // The rest of a body that is too big is not read; the connection cannot be used again.
    return sendJson(request, response, body.status, { error: body.message }, body.status === 413 ? { connection: "close" } : {});
  }
  try {
    sendJson(request, response, 200, { answer: await answerCall(running.workspace.handlers, channel, body.json) });
  } catch (error) {
    if (!(error instanceof CallRefused)) throw error;
    sendJson(request, response, error.status, { error: error.message });
  }
}

async function answer(running: Running, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const method = request.method ?? "";
  const stranger = refuseStranger(request.headers, running.port, method !== "GET" && method !== "HEAD");
  if (stranger) return sendText(request, response, stranger.status, stranger.message);
  if (!["GET", "HEAD", "POST"].includes(method)) return sendText(request, response, 405, "Only GET, HEAD and POST are answered.", { allow: "GET, HEAD, POST" });

  const [path = "/", query = ""] = (request.url ?? "/").split("?", 2);
  const token = new URLSearchParams(query).get("token");
  const cookie = `repwright-${running.port}`;
  if (path === "/" && method === "GET" && opens(running, token)) {
    return sendText(request, response, 303, "Welcome.", { location: "/", "set-cookie": `${cookie}=${running.session}; Path=/; HttpOnly; SameSite=Strict` });
  }
  if (!sameSecret(cookieValue(request.headers.cookie, cookie), running.session)) {
    const message = "Open Repwright with the whole address it printed, including the part after the question mark.";
    return path.startsWith(CALL_PATH) ? sendJson(request, response, 403, { error: message }) : sendText(request, response, 403, message);
  }

  if (path.startsWith(CALL_PATH)) {
    const channel = path.slice(CALL_PATH.length);
    if (channel === "events" && method === "GET") return streamEvents(running.workspace, response, PAGE_HEADERS);
    if (method !== "POST") return sendJson(request, response, 405, { error: "The bridge is asked with POST." }, { allow: "POST" });
    return answerBridge(running, request, response, channel.replaceAll("%3A", ":"));
  }
  if (method === "POST") return sendText(request, response, 405, "Files are only read.", { allow: "GET, HEAD" });
  const file = await readStatic(running.renderer, path);
  if (!file) return sendText(request, response, 404, "There is no such page.");
  send(request, response, 200, file.type, file.bytes);
}

const listen = (server: Server, port: number): Promise<void> =>
  new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, LOOPBACK, () => {
      server.off("error", reject);
      resolve();
    });
  });

/**
 * Serves the screens and the bridge to a browser on this computer, and to nobody else: it listens on
 * 127.0.0.1, answers to that name only, and opens for whoever holds the address it returns.
 * @throws when the port is taken
 */
export async function startHost(setup: HostSetup): Promise<Host> {
  let running: Running | null = null;
  const server = createServer((request, response) => {
    if (!running) return void response.destroy();
    answer(running, request, response).catch((error: unknown) => {
      console.error(`Repwright host: ${error instanceof Error ? error.message : String(error)}`);
      if (response.headersSent) response.destroy();
      else sendJson(request, response, 500, { error: "Something went wrong on this computer; the reason is in the terminal." });
    });
  });
  await listen(server, setup.port ?? 0);
  const { port } = server.address() as AddressInfo;
  const onceTokens = new Set<string>();
  running = { ...setup, port, token: newSecret(), onceTokens, session: newSecret() };
  const entry = (token: string): string => `http://${hostNames(port)[0]}/?token=${token}`;
  return {
    address: entry(running.token),
    port,
    addressForOnce: () => {
      const token = newSecret();
      onceTokens.add(token);
      return entry(token);
    },
    close: () =>
      new Promise((resolve) => {
        setup.workspace.close();
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
