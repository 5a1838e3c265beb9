import { useRef, useState } from "react";
import type { Answer } from "../../shared/bridge";
import { useApi } from "../session/context";

export type Draft = Extract<Answer<"import:read">, { ok: true }>;

export type Reading =
  | { readonly step: "choosing"; readonly problem: string | null }
  | { readonly step: "reading"; readonly name: string }
  | { readonly step: "read"; readonly name: string; readonly draft: Draft };

const CHUNK = 0x8000;

/** Bytes as base64, in pieces, for a whole file at once is too many arguments. */
function base64Of(bytes: Uint8Array): string {
  let text = "";
  for (let at = 0; at < bytes.length; at += CHUNK) text += String.fromCharCode(...bytes.subarray(at, at + CHUNK));
  return btoa(text);
}

/** More than any reading takes; such a file is told by its size and never loaded. */
const NEVER_LOADED = 5 * 1024 * 1024;

/** Foreign words on their way to a draft. An answer that comes after another start is let go. */
export function useReading() {
  const api = useApi();
  const [reading, setReading] = useState<Reading>({ step: "choosing", problem: null });
  const turn = useRef(0);

  const read = async (name: string, size: number, bytes: () => Promise<Uint8Array>): Promise<void> => {
    const mine = ++turn.current;
    const show = (next: Reading): void => {
      if (mine === turn.current) setReading(next);
    };
    show({ step: "reading", name });
    try {
      const base64 = size > NEVER_LOADED ? "" : base64Of(await bytes());
      const answer = await api["import:read"]({ name: name.slice(0, 400), size, base64 });
      show(answer.ok ? { step: "read", name, draft: answer } : { step: "choosing", problem: answer.message });
    } catch (error) {
      show({ step: "choosing", problem: `The words could not be read. ${error instanceof Error ? error.message : String(error)}` });
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
      turn.current += 1;
      setReading({ step: "choosing", problem });
    },
  };
}
