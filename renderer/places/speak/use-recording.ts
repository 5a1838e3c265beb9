import { useEffect, useRef, useState } from "react";
import { hearWav, type Recording, type RecordingFile } from "../../../shared/speech";

export type Hearing =
  | { readonly step: "choosing"; readonly problem: string | null }
  | { readonly step: "hearing"; /** From 0 to 1. */ readonly progress: number }
  | { readonly step: "heard"; readonly name: string; readonly recording: Recording };

const START: Hearing = { step: "choosing", problem: null };

/** A file somebody chose, read piece by piece until `isOver`. */
const piecesOf = (file: File, isOver: () => boolean): RecordingFile => ({
  size: file.size,
  read: async (at, length) => {
    if (isOver()) throw new Error("The hearing was stopped.");
    return new Uint8Array(await file.slice(at, at + length).arrayBuffer());
  },
});

/** A recording on its way to what is heard in it. A new one, or an end, stops the one before it. */
export function useRecording() {
  const [hearing, setHearing] = useState<Hearing>(START);
  const busy = useRef<File | null>(null);
  useEffect(() => () => {
    busy.current = null;
  }, []);

  const hear = async (file: File): Promise<void> => {
    busy.current = file;
    const show = (next: Hearing): void => {
      if (busy.current === file) setHearing(next);
    };
    show({ step: "hearing", progress: 0 });
    try {
      const answer = await hearWav(piecesOf(file, () => busy.current !== file), (progress) => show({ step: "hearing", progress }));
      show(answer.ok ? { step: "heard", name: file.name, recording: answer } : { step: "choosing", problem: `${file.name} was not measured. ${answer.message}` });
    } catch (error) {
      // The browser refuses a file that changed, or is gone, since it was chosen.
      show({ step: "choosing", problem: `${file.name} could not be read. ${error instanceof Error ? error.message : String(error)}` });
    }
  };

  return {
    hearing,
    hear: (file: File) => void hear(file),
    again: () => {
      busy.current = null;
      setHearing(START);
    },
  };
}
