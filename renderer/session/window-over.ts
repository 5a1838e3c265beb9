/** The window that lies over the episode, of several the one that has the focus; null when there is none. */
export function windowOver(): HTMLDialogElement | null {
  return document.activeElement?.closest<HTMLDialogElement>("dialog:modal") ?? Array.from(document.querySelectorAll<HTMLDialogElement>("dialog:modal")).at(-1) ?? null;
}

/** What a window is called: by its label, or by the heading it names. */
export function nameOfWindow(over: HTMLDialogElement): string {
  const heading = document.getElementById(over.getAttribute("aria-labelledby") ?? "");
  return over.getAttribute("aria-label") ?? heading?.textContent ?? "this window";
}
