import { join } from "node:path";
import { app, type BrowserWindow } from "electron";
import { registerAppScheme, serveApp } from "./app-origin";
import { serveBridge, tellPage } from "./bridge-host";
import { lockDown } from "./lockdown";
import { setMenu } from "./menu";
import { placesIn } from "./places";
import { VERSION } from "./version";
import { openMainWindow } from "./windows";
import { libraryFolder, openWorkspace } from "./workspace";

/**
 * The desktop app. The order matters:
 * 1. before ready: the sandbox for every process and the app:// origin; Electron takes neither later.
 * 2. one running app: a second start would open the same library twice; it hands over to the first.
 * 3. when ready: doors are closed before anything can be loaded, then files, bridge and menu, and the window last.
 */
function boot(): void {
  app.enableSandbox();
  registerAppScheme();
  if (!app.requestSingleInstanceLock()) return app.quit();

  let window: BrowserWindow | null = null;
  app.on("second-instance", () => {
    if (window?.isMinimized()) window.restore();
    window?.focus();
  });
  app.on("window-all-closed", () => app.quit());

  void app.whenReady().then(() => {
    const places = placesIn(join(app.getAppPath(), "dist"));
    const start = app.commandLine.getSwitchValue("start");
    const workspace = openWorkspace({
      library: libraryFolder(app.commandLine.getSwitchValue("library")),
      fonts: places.fonts,
      phoneSheet: places.phoneSheet,
      version: VERSION,
      window: "electron",
      start: start === "demo" || start === "last" ? start : null,
    });
    lockDown();
    serveApp(places.renderer);
    serveBridge(workspace.handlers);
    setMenu((item) => window && tellPage(window.webContents, "menu:chosen", { item }));
    workspace.listen(({ event, payload }) => window && tellPage(window.webContents, event, payload));
    app.on("will-quit", () => workspace.close());
    window = openMainWindow(places.preload);
    window.on("closed", () => (window = null));
  });
}

boot();
