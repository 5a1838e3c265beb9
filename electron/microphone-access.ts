import { systemPreferences } from "electron";

/**
 * Answers whether the system lets this app hear. macOS asks the person itself, the first time only, and must be told to;
 * without that a take would be silence. The other systems ask nobody here: where they refuse, opening the microphone fails.
 *
 * Whoever packs the app for macOS gives it an `NSMicrophoneUsageDescription` (Electron's own bundle has one): without it macOS ends
 * the app instead of asking.
 */
export function systemLetsHear(answer: (granted: boolean) => void, system: NodeJS.Platform = process.platform): void {
  if (system !== "darwin") return answer(true);
  systemPreferences.askForMediaAccess("microphone").then(answer, () => answer(false));
}
