import { BrowserWindow, dialog } from "electron";
import { APP_PAGE } from "./app-origin";

/** The one window. `preload` is the absolute path of the bundled preload script. */
export function openMainWindow(preload: string): BrowserWindow {
  const window = new BrowserWindow({
    title: "Repwright",
    width: 1280,
    height: 860,
    minWidth: 720,
    minHeight: 480,
    show: false,
    backgroundColor: "#f6f3ec",
    webPreferences: {
      preload,
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      webviewTag: false,
      // The spelling check would fetch word lists from the network.
      spellcheck: false,
      disableBlinkFeatures: "Auxclick",
    },
  });
  // Shown once there is something to see, so it does not flash white.
  window.once("ready-to-show", () => window.show());
  // A page with unsaved words objects to closing; without an answer here the window would simply stay.
  window.webContents.on("will-prevent-unload", (event) => {
    const choice = dialog.showMessageBoxSync(window, {
      type: "question",
      message: "Some words are not saved yet.",
      detail: "Closing now loses them.",
      buttons: ["Keep the window open", "Close and lose them"],
      defaultId: 0,
      cancelId: 0,
    });
    if (choice === 1) event.preventDefault();
  });
  void window.loadURL(APP_PAGE);
  return window;
}
