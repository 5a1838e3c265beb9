import type { z } from "zod";
import { bridge, type Channel, type Handlers } from "../shared/bridge";

/** A call that was turned away: whose fault it is decides the status, the message is a sentence. */
export class CallRefused extends Error {
  constructor(readonly status: 400 | 404 | 500, message: string, options?: ErrorOptions) {
    super(message, options);
  }
}

const isChannel = (name: string): name is Channel => Object.hasOwn(bridge, name);

function firstIssue(error: z.ZodError): string {
  const issue = error.issues[0];
  return `at ${issue?.path.map(String).join(".") || "the top"}: ${issue?.message ?? "wrong shape"}`;
}

/**
 * One call from the screens, whatever carried it: the channel must exist, the request is parsed, the handler is
 * called with what was parsed, and the answer is held to its schema too.
 * @throws CallRefused with a sentence for people; what a handler threw stays its cause
 */
export async function answerCall(handlers: Handlers, channel: string, request: unknown): Promise<unknown> {
  if (!isChannel(channel)) throw new CallRefused(404, `There is nothing called "${channel.slice(0, 80)}" to ask for.`);
  const parsed = bridge[channel].request.safeParse(request);
  if (!parsed.success) throw new CallRefused(400, `The request ${channel} is not understood, ${firstIssue(parsed.error)}.`);
  const handler = handlers[channel] as (request: unknown) => Promise<unknown>;
  let answer: unknown;
  try {
    answer = await handler(parsed.data);
  } catch (cause) {
    throw new CallRefused(500, cause instanceof Error ? cause.message : String(cause), { cause });
  }
  const checked = bridge[channel].answer.safeParse(answer);
  if (!checked.success) throw new CallRefused(500, `The answer to ${channel} came out wrong, ${firstIssue(checked.error)}.`);
  return checked.data;
}
