import { useEffect, useRef, useState } from "react";
import type { Imported, ImportResult } from "../../shared/imports";
import type { ReadRequest } from "./reader";
import Reader from "./reader?worker";

export type Draft = Imported;

export type Reading =
  | { readonly step: "choosing"; readonly problem: string | null }
  | { readonly step: "reading"; readonly name: string }
  | { readonly step: "read"; readonly name: string; readonly draft: Draft };

/** More than any reading takes; such a file is told by its size and never loaded. */
const NEVER_LOADED = 5 * 1024 * 1024;

/** One request answered by a reader. @throws when the reader breaks down */
const answerOf = (reader: Worker, request: ReadRequest): Promise<ImportResult> =>
  new Promise((resolve, reject) => {
    reader.onmessage = ({ data }: MessageEvent<ImportResult>) => resolve(data);
    reader.onerror = ({ message }) => reject(new Error(message));
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

  const read = async (name: string, size: number, bytes: () => Promise<Uint8Array>): Promise<void> => {
    stop();
    const mine = new Reader();
    busy.current = mine;
    const show = (next: Reading): void => {
      if (mine === busy.current) setReading(next);
    };
    show({ step: "reading", name });
    try {
      const answer = await answerOf(mine, { name, size, bytes: size > NEVER_LOADED ? null : await bytes() });
      show(answer.ok ? { step: "read", name, draft: answer } : { step: "choosing", problem: answer.message });
    } catch (error) {
      show({ step: "choosing", problem: `The words could not be read. ${error instanceof Error ? error.message : String(error)}` });
    } finally {
      mine.terminate();
    }
  };

  return {
    reading,
    readFile: (file: File) => void read(file.name, file.size, async () => new Uint8Array(await file.arrayBuffer())),
    readPasted: (text: string) => {
      const bytes = new TextEncoder().encode(text);
      void read("", bytes.length, async () => bytes);
    },
    again: (problem: string | null = null) => {
      stop();
      setReading({ step: "choosing", problem });
    },
  };
}
