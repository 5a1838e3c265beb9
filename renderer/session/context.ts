import { createContext, useContext } from "react";
import type { Api } from "../../shared/bridge";
import type { Session, SessionActions } from "./types";

const missing = (): never => {
  throw new Error("useSession: no session above this component");
};

export const SessionContext = createContext<Session | null>(null);
export const ActionsContext = createContext<SessionActions | null>(null);
export const ApiContext = createContext<Api | null>(null);

/** The open episode and what is computed from it. */
export const useSession = (): Session => useContext(SessionContext) ?? missing();
/** What a screen may do to it. */
export const useActions = (): SessionActions => useContext(ActionsContext) ?? missing();
/** The bridge to what runs on Node. */
export const useApi = (): Api => useContext(ApiContext) ?? missing();
