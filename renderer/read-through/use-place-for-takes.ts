import { useEffect, useState } from "react";
import { useActions, useSession } from "../session/context";

/** The episode's file, which the takes lie beside; an episode that has none yet is saved first. */
export function usePlaceForTakes(): { readonly file: string | null; readonly problem: string | null } {
  const { file } = useSession();
  const { save } = useActions();
  const [asked, setAsked] = useState(false);
  useEffect(() => {
    if (file.name !== null || asked) return;
    setAsked(true);
    void save();
  }, [file.name, asked, save]);
  const failed = file.name === null && asked && file.status === "failed";
  return { file: file.name, problem: failed ? `The episode could not be saved, so there is no place for takes yet. ${file.message ?? ""}`.trim() : null };
}
