/** The two lines between page and main process: calls one way, events the other. */
export const CALL_LINE = "repwright:call";
export const EVENT_LINE = "repwright:event";

/** What comes back over the call line: an answer, or a sentence. Thrown errors would arrive with the line's name glued in front. */
export type CallAnswer = { readonly answer: unknown } | { readonly error: string };
