import { bridge, bridgeEvents, type Answer, type Api, type BridgeEvent, type Channel, type EventPayload, type Handlers, type Request } from "../../shared/bridge";

/** Requests that go on after the page is closed hold at most 64 KiB, all of them together; browsers refuse more. Bytes. */
const MOST_AFTER_CLOSING = 60_000;

/** One request to the loopback host. The answer is checked again here: a page never trusts a wire. */
async function post<C extends Channel>(channel: C, request: Request<C>): Promise<Answer<C>> {
  const body = JSON.stringify(request);
  const response = await fetch(`/bridge/${channel}`, {
    method: "POST",
    headers: { "content-type": "application/json", "x-repwright": "1" },
    body,
    // The last words of a window that is being closed are still on their way then.
    keepalive: channel === "episode:save" && new Blob([body]).size <= MOST_AFTER_CLOSING,
  }).catch(() => {
    throw new Error("Repwright's host does not answer. Is the window where it was started still open?");
  });
  const answer = (await response.json().catch(() => null)) as { answer?: unknown; error?: string } | null;
  if (!response.ok || !answer || answer.error !== undefined) throw new Error(answer?.error ?? `The host answered ${response.status}.`);
  return bridge[channel].answer.parse(answer.answer) as Answer<C>;
}

/** The bridge over HTTP to the loopback host; events come as server-sent events. */
export function httpApi(): Api {
  const handlers = Object.fromEntries((Object.keys(bridge) as Channel[]).map((channel) => [channel, (request: never) => post(channel, request)])) as unknown as Handlers;
  let source: EventSource | null = null;
  const on = <E extends BridgeEvent>(event: E, listener: (payload: EventPayload<E>) => void): (() => void) => {
    source ??= new EventSource("/bridge/events");
    const receive = (message: MessageEvent<string>): void => {
      const parsed = bridgeEvents[event].safeParse(JSON.parse(message.data));
      if (parsed.success) listener(parsed.data as EventPayload<E>);
    };
    const open = source;
    open.addEventListener(event, receive);
    return () => open.removeEventListener(event, receive);
  };
  return { ...handlers, on };
}
