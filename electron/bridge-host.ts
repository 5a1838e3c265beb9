import { ipcMain, type IpcMainInvokeEvent, type WebContents } from "electron";
import type { BridgeEvent, EventPayload, Handlers } from "../shared/bridge";
import { CallRefused, answerCall } from "./answer-call";
import { isAppAddress } from "./app-origin";
import { CALL_LINE, EVENT_LINE, type CallAnswer } from "./ipc-names";

/** Only the top frame of a page of this app may call; a frame within it, or a page that got in somehow, may not. */
function isOurPage(event: IpcMainInvokeEvent): boolean {
  const frame = event.senderFrame;
  return frame !== null && frame.parent === null && isAppAddress(frame.url);
}

/** Answers the page's calls: first who is asking, then what, and only then the handler. */
export function serveBridge(handlers: Handlers): void {
  ipcMain.handle(CALL_LINE, async (event, channel: unknown, request: unknown): Promise<CallAnswer> => {
    if (!isOurPage(event)) return { error: "Only Repwright's own page is answered." };
    try {
      return { answer: await answerCall(handlers, String(channel), request) };
    } catch (error) {
      if (error instanceof CallRefused) return { error: error.message };
      throw error;
    }
  });
}

/** Sends one event to a page; a window that is closing gets none. */
export function tellPage<E extends BridgeEvent>(contents: WebContents, event: E, payload: EventPayload<E>): void {
  if (!contents.isDestroyed()) contents.send(EVENT_LINE, event, payload);
}
