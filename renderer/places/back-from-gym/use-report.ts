import { useRef, useState } from "react";
import { readReport, type SessionReport } from "../../../shared/session-report";
import { useSession } from "../../session/context";

export type Reading =
  | { readonly step: "choosing"; readonly problem: string | null }
  | { readonly step: "read"; readonly report: SessionReport }
  | { readonly step: "taken-over"; readonly changed: boolean };

/** More than any session is; such a file is told by its size and never loaded. */
const NEVER_LOADED = 2_000_000;

/** What came back from the gym on its way into the open episode. An answer that comes after another start is let go. */
export function useReport() {
  const { episode } = useSession();
  const [reading, setReading] = useState<Reading>({ step: "choosing", problem: null });
  const turn = useRef(0);

  const take = (text: string): void => {
    turn.current += 1;
    const read = readReport(text, episode);
    setReading(read.ok ? { step: "read", report: read.report } : { step: "choosing", problem: read.message });
  };
  const readFile = async (file: File): Promise<void> => {
    const mine = ++turn.current;
    const fail = (problem: string): void => {
      if (mine === turn.current) setReading({ step: "choosing", problem });
    };
    if (file.size > NEVER_LOADED) return fail(`"${file.name}" is far more than a session: ${Math.ceil(file.size / 1_000_000)} MB. Choose the file that ends in ".session.json".`);
    try {
      const text = new TextDecoder("utf-8", { fatal: true }).decode(await file.arrayBuffer());
      if (mine === turn.current) take(text);
    } catch (error) {
      fail(error instanceof TypeError ? `"${file.name}" is no text. Choose the file that ends in ".session.json".` : `"${file.name}" could not be read. ${error instanceof Error ? error.message : String(error)}`);
    }
  };
  return { reading, readFile: (file: File) => void readFile(file), readPasted: take, takenOver: (changed: boolean) => setReading({ step: "taken-over", changed }), again: () => setReading({ step: "choosing", problem: null }) };
}
