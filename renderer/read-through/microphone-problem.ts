/** What this window runs in, as far as it decides where a microphone is allowed. */
export interface Surroundings {
  readonly window: "own" | "browser";
  readonly system: "macOS" | "Windows" | "other";
}

/** Read from what a browser says of itself; our own window says that it is Electron's. */
export function surroundings(userAgent: string): Surroundings {
  return {
    window: /\bElectron\//.test(userAgent) ? "own" : "browser",
    system: /\bMacintosh\b/.test(userAgent) ? "macOS" : /\bWindows\b/.test(userAgent) ? "Windows" : "other",
  };
}

/** Where each system keeps what may listen; `who` is what the system knows the window as. From memory. */
function inTheSystem(system: Surroundings["system"], who: "this app" | "your browser"): string {
  if (system === "macOS") return `Allow it for ${who} in System Settings, Privacy & Security, Microphone. Then quit ${who}, open it again and try again.`;
  if (system === "Windows") return "Allow it in Settings, Privacy & security, Microphone: both microphone access and desktop apps must be on. Then try again.";
  return `Allow it for ${who} in the privacy or sound settings of your desktop, then try again.`;
}

/** What to do about a refusal. A browser has its own list of pages beside the system's list of programs, and may say which one refused. */
function afterRefusal(message: string, { window, system }: Surroundings): string {
  if (window === "own") return inTheSystem(system, "this app");
  if (/\bby (?:the )?system\b/i.test(message)) return `The system keeps it from your browser. ${inTheSystem(system, "your browser")}`;
  return "Allow it for this page: open what stands left of the page's address, set the microphone to allowed, then try again.";
}

/** Why there is no microphone, in sentences that say what to do. */
export function microphoneProblem(error: unknown, here: Surroundings): string {
  const { name, message } = error instanceof DOMException || error instanceof Error ? error : { name: "", message: "" };
  const without = "You can go on without it: tap at the end of each line.";
  if (/dismissed/i.test(message)) return `The question about the microphone was closed without an answer. Try again and allow it. ${without}`;
  if (name === "NotAllowedError" || name === "SecurityError") return `The microphone was refused. ${afterRefusal(message, here)} ${without}`;
  if (name === "NotFoundError" || name === "OverconstrainedError") return `No microphone was found. Plug one in and try again. ${without}`;
  if (name === "NotReadableError" || name === "AbortError") return `The microphone is there but could not be opened; another program may be using it. Close it there and try again. ${without}`;
  return `The microphone could not be opened${message ? `: ${message}` : ""}. ${without}`;
}
