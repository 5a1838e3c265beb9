import { contextBridge, ipcRenderer } from "electron";
import { bridge, bridgeEvents, type BridgeEvent } from "../shared/bridge";
import { CALL_LINE, EVENT_LINE, type CallAnswer } from "./ipc-names";

/**
 * The only thing the page gets from outside: one function per channel and `on`. It gets neither
 * ipcRenderer nor Electron's event objects, so it cannot reach a line that is not declared in the bridge.
 */
async function call(channel: string, request: unknown): Promise<unknown> {
  const reply = (await ipcRenderer.invoke(CALL_LINE, channel, request)) as CallAnswer;
  if ("error" in reply) throw new Error(reply.error);
  return reply.answer;
}

const listeners = new Map<string, Set<(payload: unknown) => void>>(Object.keys(bridgeEvents).map((event) => [event, new Set()]));

ipcRenderer.on(EVENT_LINE, (_event, name: string, payload: unknown) => listeners.get(name)?.forEach((listener) => listener(payload)));

function on(event: BridgeEvent, listener: (payload: unknown) => void): () => void {
  const listening = listeners.get(event);
  if (!listening) throw new Error(`There is no event called "${String(event)}".`);
  listening.add(listener);
  return () => void listening.delete(listener);
}

contextBridge.exposeInMainWorld("repwright", {
  ...Object.fromEntries(Object.keys(bridge).map((channel) => [channel, (request: unknown) => call(channel, request)])),
  on,
});
