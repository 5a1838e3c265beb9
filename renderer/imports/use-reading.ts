import { useEffect, useRef, useState } from "react";
import type { Imported, ImportResult } from "../../shared/imports";
import type { ReadAnswer, ReadRequest } from "./reader";
import Reader from "./reader?worker";

export type Reading =
  | { readonly step: "choosing"; readonly problem: string | null }
  | { readonly step: "reading"; /** From 0 to 1. */ readonly progress: number }
  | { readonly step: "read"; readonly name: string; readonly draft: Imported };

/** One request answered by a reader. @throws when the reader breaks down */
const answerOf = (reader: Worker, request: ReadRequest, onProgress: (share: number) => void): Promise<ImportResult> =>
  new Promise((resolve, reject) => {
    reader.onmessage = ({ data }: MessageEvent<ReadAnswer>) => ("result" in data ? resolve(data.result) : onProgress(data.progress));
    // A script that cannot be loaded gives an event without a message.
    reader.onerror = ({ message }) => reject(new Error(message || "Its part of the app could not be loaded; start the app again."));
    reader.postMessage(request);
  });

/** Foreign words on their way to a draft. A new start, or an end, stops the reading before it. */
export function useReading() {
  const [reading, setReading] = useState<Reading>({ step: "choosing", problem: null });
  const busy = useRef<Worker | null>(null);

  const stop = (): void => {
    busy.current?.terminate();
    busy.current = null;
  };
  useEffect(() => stop, []);

  const read = async (name: string, words: Blob): Promise<void> => {
    stop();
    const mine = new Reader();
    busy.current = mine;
    const show = (next: Reading): void => {
      if (mine === busy.current) setReading(next);
    };
    show({ step: "reading", progress: 0 });
    try {
      const answer = await answerOf(mine, { name, words }, (progress) => show({ step: "reading", progress }));
      show(answer.ok ? { step: "read", name, draft: answer } : { step: "choosing", problem: answer.message });
    } catch (error) {
      show({ step: "choosing", problem: `The words could not be read. ${error instanceof Error ? error.message : String(error)}` });
    } finally {
      mine.terminate();
    }
  };

  return {
    reading,
    readFile: (file: File) => void read(file.name, file),
    readPasted: (text: string) => void read("", new Blob([text])),
    again: () => {
      stop();
      setReading({ step: "choosing", problem: null });
    },
  };
}
