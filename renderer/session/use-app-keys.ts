import { useCallback, useEffect, useState } from "react";
import type { Api } from "../../shared/bridge";
import { commandOf, refusalOf, type AppCommand } from "./app-commands";
import type { Refused } from "./refusal";
import type { SessionActions } from "./types";
import { nameOfWindow, windowOver } from "./window-over";

/** Words that are not the episode's yet, and the sheet, have an undo of their own. */
const OWN_UNDO = ".surface, [data-draft='true'], .waive-form textarea, dialog input[type='text'], dialog textarea";

const hasOwnUndo = (target: EventTarget | null): boolean => target instanceof Element && target.closest(OWN_UNDO) !== null;

/**
 * Keys and menu items that work in every place: save, undo, redo, open, new, make papers, the list of checks.
 * While a window lies over the episode all but saving are refused.
 * @returns the last refusal until it was read, and what to call then
 */
export function useAppKeys(api: Api, actions: SessionActions, { onOpen, onPapers, onChecks }: { onOpen: () => void; onPapers: () => void; onChecks: () => void }): { refused: Refused | null; onRead: () => void } {
  const [refused, setRefused] = useState<Refused | null>(null);
  useEffect(() => {
    const run: Readonly<Record<AppCommand, () => void>> = {
      new: actions.newEpisode, open: onOpen, save: () => void actions.save(), undo: actions.undo, redo: actions.redo, "make-papers": onPapers, checks: onChecks,
    };
    const choose = (command: AppCommand): void => {
      const over = windowOver();
      const sentence = refusalOf(command, over && nameOfWindow(over));
      if (over === null || sentence === null) run[command]();
      // Something that has the whole screen hides even the window it belongs to.
      else setRefused({ sentence, over: over.querySelector<HTMLElement>(":fullscreen") ?? over });
    };
    const onKey = (event: KeyboardEvent): void => {
      const command = commandOf(event);
      if (command === null || ((command === "undo" || command === "redo") && hasOwnUndo(event.target))) return;
      event.preventDefault();
      choose(command);
    };
    document.addEventListener("keydown", onKey);
    const stop = api.on("menu:chosen", ({ item }) => choose(item));
    return () => {
      document.removeEventListener("keydown", onKey);
      stop();
    };
  }, [api, actions, onOpen, onPapers, onChecks]);
  return { refused, onRead: useCallback(() => setRefused(null), []) };
}
