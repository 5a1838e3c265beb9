type Lock = Pick<WakeLockSentinel, "released" | "release">;
type Page = Pick<Document, "visibilityState" | "addEventListener" | "removeEventListener">;

/**
 * Keeps the screen lit. The system takes the lock away whenever another window covers the page, so it is asked for anew each time the page comes back.
 * @param request - asks for the lock; a refusal leaves the screen to the system
 * @returns lets the screen go dark again
 */
export function keepLit(page: Page, request: () => Promise<Lock>): () => void {
  let [gone, asking] = [false, false];
  let lock: Lock | null = null;
  const ask = (): void => {
    if (page.visibilityState !== "visible" || asking || (lock !== null && !lock.released)) return;
    asking = true;
    void request().then((got) => {
      if (gone) void got.release();
      else lock = got;
    }, () => undefined).finally(() => {
      asking = false;
    });
  };
  ask();
  page.addEventListener("visibilitychange", ask);
  return () => {
    gone = true;
    page.removeEventListener("visibilitychange", ask);
    void lock?.release();
  };
}
