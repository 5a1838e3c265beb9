import { useEffect, useRef, useState } from "react";
import type { Answer, Request } from "../../shared/bridge";
import { useActions, useApi, useSession } from "../session/context";
import { documentName } from "./documents";

type Made = Extract<Answer<"papers:export">, { ok: true }>;

export type Making =
  | { readonly step: "choosing" }
  | { readonly step: "working"; readonly done: number; readonly total: number; readonly now: string | null; readonly stopping: boolean }
  | { readonly step: "made"; readonly made: Made }
  | { readonly step: "failed"; readonly message: string };

/** Writes the chosen papers, tells how far it is, and can be stopped. */
export function useMaking() {
  const api = useApi();
  const actions = useActions();
  const { episode } = useSession();
  const [making, setMaking] = useState<Making>({ step: "choosing" });
  const job = useRef<string | null>(null);

  useEffect(
    () =>
      api.on("papers:progress", (progress) => {
        if (progress.job !== job.current) return;
        const now = progress.document === null ? null : documentName(progress.document);
        setMaking((known) => (known.step === "working" ? { ...known, done: progress.done, total: progress.total, now } : known));
      }),
    [api],
  );

  const make = async (choice: Pick<Request<"papers:export">, "documents" | "paper" | "units">): Promise<void> => {
    const id = actions.newId();
    job.current = id;
    setMaking({ step: "working", done: 0, total: choice.documents.length, now: null, stopping: false });
    try {
      const answer = await api["papers:export"]({ job: id, episode, ...choice });
      if (job.current === id) setMaking(answer.ok ? { step: "made", made: answer } : { step: "failed", message: answer.message });
    } catch (error) {
      if (job.current === id) setMaking({ step: "failed", message: `The papers could not be made: ${error instanceof Error ? error.message : String(error)}` });
    }
  };
  const cancel = (): void => {
    if (job.current === null) return;
    setMaking((known) => (known.step === "working" ? { ...known, stopping: true } : known));
    api["papers:cancel"]({ job: job.current }).catch((error: unknown) => setMaking({ step: "failed", message: `It could not be stopped: ${String(error)}` }));
  };
  const again = (): void => {
    job.current = null;
    setMaking({ step: "choosing" });
  };
  return { making, make, cancel, again };
}
