import { useState } from "react";

/** A choice kept in this window's own storage; where storage is refused it lasts until the window closes. */
export function useKept(key: string, otherwise = ""): [string, (value: string) => void] {
  const [value, setValue] = useState(() => {
    try {
      return localStorage.getItem(key) ?? otherwise;
    } catch {
      return otherwise;
    }
  });
  return [value, (next) => {
    setValue(next);
    try {
      localStorage.setItem(key, next);
    } catch {
      // Kept for this window only.
    }
  }];
}
