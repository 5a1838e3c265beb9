/** What a phone may have and a page may ask for; everything works without. */

/** @param pattern - milliseconds of buzz and pause in turn */
export function buzz(pattern: readonly number[]): void {
  if (typeof navigator.vibrate === "function") navigator.vibrate([...pattern]);
}

/** Keeps the screen on from the first press, and again each time the page comes back to sight. */
export function keepAwake(): void {
  let isWanted = false;
  const ask = (): void => {
    if (!isWanted || document.visibilityState !== "visible" || !("wakeLock" in navigator)) return;
    navigator.wakeLock.request("screen").catch(() => undefined);
  };
  document.addEventListener("visibilitychange", ask);
  document.addEventListener("click", () => {
    if (isWanted) return;
    isWanted = true;
    ask();
  });
}
