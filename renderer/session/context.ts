import { createContext, useContext, useSyncExternalStore } from "react";
import type { Api } from "../../shared/bridge";
import type { Store } from "./store";
import type { Session, SessionActions } from "./types";

const missing = (): never => {
  throw new Error("useSession: no session above this component");
};

/** The store and not what is in it: a value that changes with every letter would have the whole page searched for its readers. */
export const SessionContext = createContext<Store<Session> | null>(null);
export const ActionsContext = createContext<SessionActions | null>(null);
export const ApiContext = createContext<Api | null>(null);

/** The open episode and what is computed from it. */
export function useSession(): Session {
  const store = useContext(SessionContext) ?? missing();
  return useSyncExternalStore(store.subscribe, store.get);
}
/** What a screen may do to it. */
export const useActions = (): SessionActions => useContext(ActionsContext) ?? missing();
/** The bridge to what runs on Node. */
export const useApi = (): Api => useContext(ApiContext) ?? missing();
