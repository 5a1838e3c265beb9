import type { EventPayload } from "../../shared/bridge";

/** What the menu and the app's keys ask for. */
export type AppCommand = EventPayload<"menu:chosen">["item"];

/** What each command would be for, said after what stands in its way; saving changes nothing and is never in the way. */
const WAITS: Readonly<Record<Exclude<AppCommand, "save">, string>> = {
  new: "begin a new episode", open: "go to another episode", undo: "undo", redo: "redo", "make-papers": "make papers", checks: "look at the checks",
};

/**
 * Why a command cannot be done while a window lies over the episode: what it would change is out of sight there.
 * @param over - the name of that window, null when there is none
 * @returns a sentence, or null when nothing is in the way
 */
export function refusalOf(command: AppCommand, over: string | null): string | null {
  return over === null || command === "save" ? null : `Close "${over}" first, then ${WAITS[command]}.`;
}

type Keys = Pick<KeyboardEvent, "key" | "ctrlKey" | "metaKey" | "altKey" | "shiftKey">;

/** The command a key stands for, null when it is none of the app's. */
export function commandOf({ key, ctrlKey, metaKey, altKey, shiftKey }: Keys): AppCommand | null {
  if (!(ctrlKey || metaKey) || altKey) return null;
  switch (key.toLowerCase()) {
    case "s": return "save";
    case "o": return "open";
    case "z": return shiftKey ? "redo" : "undo";
    case "y": return "redo";
    default: return null;
  }
}
