import { useEffect } from "react";
import type { Api } from "../../shared/bridge";
import type { SessionActions } from "./types";

/** Keys and menu items that work in every place: save, undo, redo, open, new, make papers, the list of checks. */
export function useAppKeys(api: Api, actions: SessionActions, { onOpen, onPapers, onChecks }: { onOpen: () => void; onPapers: () => void; onChecks: () => void }): void {
  useEffect(() => {
    const run: Readonly<Record<string, () => void>> = {
      new: actions.newEpisode, open: onOpen, save: () => void actions.save(), undo: actions.undo, redo: actions.redo, "make-papers": onPapers, checks: onChecks,
    };
    const onKey = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      // The sheet has its own undo, and words not handed over yet are the field's to take back.
      const ownUndo = event.target instanceof Element && event.target.closest(".surface, [data-draft='true'], .waive-form textarea") !== null;
      const item = key === "s" ? "save" : key === "o" ? "open" : key === "z" && !ownUndo ? (event.shiftKey ? "redo" : "undo") : key === "y" && !ownUndo ? "redo" : null;
      if (item === null) return;
      event.preventDefault();
      run[item]?.();
    };
    document.addEventListener("keydown", onKey);
    const stop = api.on("menu:chosen", ({ item }) => run[item]?.());
    return () => {
      document.removeEventListener("keydown", onKey);
      stop();
    };
  }, [api, actions, onOpen, onPapers, onChecks]);
}
