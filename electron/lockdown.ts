import { app, session } from "electron";
import { isAppAddress } from "./app-origin";

/** Copying a description for the video's page is the only thing a page may ask of the system. */
const ALLOWED_PERMISSION = "clipboard-sanitized-write";
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
  page.setPermissionRequestHandler((contents, permission, answer) => answer(permission === ALLOWED_PERMISSION && isAppAddress(contents.getURL())));
  page.setPermissionCheckHandler((_contents, permission, origin) => permission === ALLOWED_PERMISSION && isAppAddress(origin));
  page.setDevicePermissionHandler(() => false);
  page.webRequest.onBeforeRequest((details, answer) => answer({ cancel: !LOCAL_ADDRESS.test(details.url) }));
}
