import type { Api, Request, Take } from "../../shared/bridge";
import { base64Of, joined } from "./samples";

/** Most samples sent at once: what one request may hold. */
const MOST_SAMPLES = 1_000_000;

/** Writes one take to its file while it is being spoken. What was not written yet stays in memory until it is. */
export interface TakeWriter {
  readonly push: (samples: Int16Array) => void;
  /** The take is over. Resolves when all of it is written, or stopped at a problem. @param seconds - said; null when broken off */
  readonly end: (seconds: number | null) => Promise<TakeEnd>;
  /** After a problem: goes on where it stopped. */
  readonly again: () => Promise<TakeEnd>;
}

export type TakeEnd = { readonly ok: true; readonly take: Take } | { readonly ok: false; readonly sentence: string };

type TakesApi = Pick<Api, "takes:begin" | "takes:append" | "takes:end">;

/** @param onProblem - told once when writing stops, while the take may still go on */
export function createTakeWriter(api: TakesApi, of: Request<"takes:begin">, onProblem: (sentence: string) => void): TakeWriter {
  let waiting: Int16Array[] = [];
  let waitingLength = 0;
  let sent = 0;
  let take: Take | null = null;
  let ending: { seconds: number | null } | null = null;
  let sentence: string | null = null;
  let running: Promise<void> | null = null;
  let isClosed = false;

  const step = async (): Promise<"more" | "enough"> => {
    if (take === null) {
      const begun = await api["takes:begin"](of);
      if (!begun.ok) throw new Error(begun.message);
      take = begun.take;
      return "more";
    }
    // A second's worth at a time; what is left when the take is over.
    if (waitingLength >= (ending ? 1 : of.rate)) {
      const all = joined(waiting);
      const piece = all.subarray(0, MOST_SAMPLES);
      const answer = await api["takes:append"]({ file: of.file, take: take.id, after: sent, samples: base64Of(piece) });
      if (!answer.ok) throw new Error(answer.message);
      sent += piece.length;
      // More may have come in meanwhile; it stands behind what was sent.
      const rest = joined(waiting).subarray(piece.length);
      waiting = rest.length > 0 ? [rest] : [];
      waitingLength = rest.length;
      return "more";
    }
    if (!ending || isClosed) return "enough";
    const answer = await api["takes:end"]({ file: of.file, take: take.id, seconds: ending.seconds });
    if (!answer.ok) throw new Error(answer.message);
    take = answer.take;
    isClosed = true;
    return "enough";
  };

  const run = (): Promise<void> => {
    if (sentence !== null) return Promise.resolve();
    running ??= (async () => {
      try {
        while ((await step()) === "more");
      } catch (error) {
        sentence = error instanceof Error ? error.message : String(error);
        onProblem(sentence);
      } finally {
        running = null;
      }
    })();
    return running;
  };
  const finish = async (): Promise<TakeEnd> => {
    await running;
    while (sentence === null && !isClosed) await run();
    if (sentence !== null) return { ok: false, sentence };
    return take === null ? { ok: false, sentence: "The take was not begun." } : { ok: true, take };
  };
  return {
    push: (samples) => {
      waiting.push(samples);
      waitingLength += samples.length;
      if (take === null || waitingLength >= of.rate) void run();
    },
    end: (seconds) => {
      ending = { seconds };
      return finish();
    },
    again: () => {
      sentence = null;
      return ending ? finish() : run().then(finish);
    },
  };
}
