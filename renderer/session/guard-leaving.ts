import type { FileKeeper } from "./file-keeper";

/** What of the page is needed. */
export type PageSeen = EventTarget & { readonly visibilityState: DocumentVisibilityState };

/**
 * Words are not lost with the window: they go to disk when it is put out of sight, and while some are on no disk yet it asks before it closes.
 * @returns a function that guards no more
 */
export function guardLeaving(files: Pick<FileKeeper, "hasUnsaved" | "saveNowIfChanged">, page: PageSeen, window: EventTarget): () => void {
  const save = (): void => void files.saveNowIfChanged();
  const onSeen = (): void => {
    if (page.visibilityState === "hidden") save();
  };
  const onLeave = (event: Event): void => {
    if (!files.hasUnsaved()) return;
    // Begun before the question, so that the words are there whatever the answer is.
    save();
    event.preventDefault();
  };
  page.addEventListener("visibilitychange", onSeen);
  window.addEventListener("beforeunload", onLeave);
  window.addEventListener("pagehide", save);
  return () => {
    page.removeEventListener("visibilitychange", onSeen);
    window.removeEventListener("beforeunload", onLeave);
    window.removeEventListener("pagehide", save);
  };
}
