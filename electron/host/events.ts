import type { ServerResponse } from "node:http";
import type { BridgeMessage, Workspace } from "../workspace";

const KEEP_ALIVE_MS = 20_000;

/**
 * Sends the workspace's events to one page until it goes away.
 * @source HTML Living Standard, 9.2 Server-sent events
 */
export function streamEvents(workspace: Workspace, response: ServerResponse, headers: Readonly<Record<string, string>>): void {
  response.writeHead(200, { ...headers, "content-type": "text/event-stream; charset=utf-8" });
  response.write(": listening\n\n");
  // JSON has no raw line breaks, so one data line holds any payload.
  const stop = workspace.listen(({ event, payload }: BridgeMessage) => response.write(`event: ${event}\ndata: ${JSON.stringify(payload)}\n\n`));
  const keepAlive = setInterval(() => response.write(": still here\n\n"), KEEP_ALIVE_MS);
  response.on("close", () => {
    clearInterval(keepAlive);
    stop();
  });
}
