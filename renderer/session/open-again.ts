import type { Api } from "../../shared/bridge";
import type { Store } from "./store";
import type { FileState, SessionActions } from "./types";

/** The part of this window's own storage that is needed; it outlives a reload and ends with the window. */
export type WindowStorage = Pick<Storage, "getItem" | "setItem" | "removeItem">;

const KEY = "open-file";

/** The file that was open in this window before it was loaded anew; null for none, or where storage is refused. */
export function fileBefore(storage: () => WindowStorage): string | null {
  try {
    return storage().getItem(KEY);
  } catch {
    return null;
  }
}

/** Notes which file is open in this window, whenever that changes. */
export function noteOpenFile(file: Store<FileState>, storage: () => WindowStorage): void {
  let noted: string | null = null;
  const note = (): void => {
    const { name } = file.get();
    if (name === noted) return;
    noted = name;
    try {
      if (name === null) storage().removeItem(KEY);
      else storage().setItem(KEY, name);
    } catch {
      // Where storage is refused a reload begins as the first start did.
    }
  };
  file.subscribe(note);
}

/**
 * What the window begins with: the episode that was open in it, else what the start-up asked for, else the empty page.
 * @param before - the file that was open in it; one that cannot be opened any more is passed over
 */
export async function openFirst(api: Pick<Api, "app:about" | "library:list">, actions: Pick<SessionActions, "openFile" | "openDemo">, before: string | null): Promise<void> {
  if (before !== null && (await actions.openFile(before)) === null) return;
  const { start } = await api["app:about"]({});
  if (start === "demo") actions.openDemo();
  if (start !== "last") return;
  const newest = (await api["library:list"]({})).find(({ problem }) => problem === null);
  if (newest) await actions.openFile(newest.file);
}
