import { app, session } from "electron";
import { isAppAddress } from "./app-origin";
import { systemLetsHear } from "./microphone-access";

/**
 * What a page may ask of the system: copying a description for the video's page, the whole screen for the prompter,
 * a screen that stays on meanwhile.
 */
const ALLOWED_PERMISSIONS = new Set(["clipboard-sanitized-write", "fullscreen", "screen-wake-lock"]);

/** The microphone, for the read-through; a camera that comes along with it is refused. Kinds as the system names them, "audio" and "video". */
const isMicrophoneAlone = (permission: string, kinds: readonly (string | undefined)[]): boolean =>
  permission === "media" && kinds.length > 0 && kinds.every((kind) => kind === "audio");
/** What the page itself makes, and the app's own files. */
const LOCAL_ADDRESS = /^(app|data|blob|devtools|chrome-extension):/;

/**
 * Closes everything a page could use to get out: other addresses, new windows, embedded pages,
 * permissions, the network. Runs before the first window is made.
 */
export function lockDown(): void {
  app.on("web-contents-created", (_created, contents) => {
    const stay = (event: { preventDefault: () => void }, address: string): void => {
      if (!isAppAddress(address)) event.preventDefault();
    };
    contents.on("will-navigate", (event) => stay(event, event.url));
    contents.on("will-redirect", (event) => stay(event, event.url));
    contents.on("will-frame-navigate", (event) => stay(event, event.url));
    contents.on("will-attach-webview", (event) => event.preventDefault());
    contents.setWindowOpenHandler(() => ({ action: "deny" }));
  });

  const page = session.defaultSession;
  page.setPermissionRequestHandler((contents, permission, answer, details) => {
    const kinds = "mediaTypes" in details ? (details.mediaTypes ?? []) : [];
    if (!isAppAddress(contents.getURL())) answer(false);
    else if (isMicrophoneAlone(permission, kinds)) systemLetsHear(answer);
    else answer(ALLOWED_PERMISSIONS.has(permission));
  });
  page.setPermissionCheckHandler((_contents, permission, origin, details) =>
    (ALLOWED_PERMISSIONS.has(permission) || isMicrophoneAlone(permission, [details.mediaType])) && isAppAddress(origin));
  page.setDevicePermissionHandler(() => false);
  page.webRequest.onBeforeRequest((details, answer) => answer({ cancel: !LOCAL_ADDRESS.test(details.url) }));
}
