import { createContext, useContext } from "react";

/** Opens the list of what Repwright checks, at one rule or at its beginning. */
export type OpenBook = (about: string | null) => void;

export const BookContext = createContext<OpenBook | null>(null);

/** @throws {Error} outside the app */
export function useBook(): OpenBook {
  const open = useContext(BookContext);
  if (!open) throw new Error("useBook: no app above this component");
  return open;
}
