import type { PhoneSession } from "../../../shared/exports";
import { PRESS_WORDS, type Press } from "./presses";

const PREFIX = "repwright phone sheet";

export interface Kept {
  readonly presses: readonly Press[];
  /** False when this phone keeps nothing: a reload would forget. */
  readonly keeps: boolean;
  /** A session of an older plan of this episode lies here as well. */
  readonly hasOlder: boolean;
}

/** One session of one plan; another plan begins afresh and leaves the old presses where they are. */
const keyOf = ({ episode, plan }: PhoneSession): string => `${PREFIX} ${episode} ${plan}`;

const isPress = (value: unknown): value is Press => typeof value === "object" && value !== null && Object.keys(PRESS_WORDS).includes(String((value as { type?: unknown }).type)) && typeof (value as { at?: unknown }).at === "number";

/** What this phone remembers. Storage may be refused or full; then the page works without. */
export function readKept(session: PhoneSession, storage: () => Storage): Kept {
  try {
    const store = storage();
    const text = store.getItem(keyOf(session));
    const keys = Array.from({ length: store.length }, (_, i) => store.key(i) ?? "");
    const hasOlder = text === null && keys.some((key) => key.startsWith(`${PREFIX} ${session.episode} `));
    // A try with what will be written later: some phones read but do not write.
    store.setItem(`${PREFIX} try`, "1");
    store.removeItem(`${PREFIX} try`);
    const value: unknown = text === null ? [] : JSON.parse(text);
    return { presses: Array.isArray(value) ? value.filter(isPress) : [], keeps: true, hasOlder };
  } catch {
    return { presses: [], keeps: false, hasOlder: false };
  }
}

/** @returns false when it could not be kept */
export function keep(session: PhoneSession, presses: readonly Press[], storage: () => Storage): boolean {
  try {
    storage().setItem(keyOf(session), JSON.stringify(presses));
    return true;
  } catch {
    return false;
  }
}
