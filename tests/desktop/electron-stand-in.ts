import { EventEmitter } from "node:events";
import { vi } from "vitest";

/**
 * Stands in for Electron's module: it keeps what the app asked for and lets a test play the runtime's part.
 * What only the runtime can show is checked in real-window.mjs.
 */
type Handler = (event: unknown, ...args: unknown[]) => unknown;

export const switches = new Map<string, string>();
let hasLock = true;
export const setLock = (got: boolean): void => void (hasLock = got);

export const order: string[] = [];
const noting = <A extends unknown[], R>(name: string, work: (...args: A) => R) => vi.fn((...args: A): R => {
  order.push(name);
  return work(...args);
});

export const app = Object.assign(new EventEmitter(), {
  enableSandbox: noting("enableSandbox", () => undefined),
  requestSingleInstanceLock: noting("requestSingleInstanceLock", () => hasLock),
  whenReady: noting("whenReady", () => Promise.resolve()),
  quit: noting("quit", () => undefined),
  getAppPath: () => process.cwd(),
  commandLine: { getSwitchValue: (name: string) => switches.get(name) ?? "" },
});

export let scheme: ((request: Request) => Promise<Response>) | null = null;
export const protocol = {
  registerSchemesAsPrivileged: noting("registerSchemes", (_schemes: unknown) => undefined),
  handle: noting("serveApp", (_name: string, handler: (request: Request) => Promise<Response>) => void (scheme = handler)),
};

export const permissions: {
  request: ((contents: { getURL: () => string }, permission: string, answer: (granted: boolean) => void, details: { mediaTypes?: string[] }) => void) | null;
  check: ((contents: unknown, permission: string, origin: string, details: { mediaType?: string }) => boolean) | null;
  device: (() => boolean) | null;
  network: ((details: { url: string }, answer: (reply: { cancel: boolean }) => void) => void) | null;
} = { request: null, check: null, device: null, network: null };

/** The person's answer when macOS asks; a test sets it. */
export const systemPreferences = { askForMediaAccess: vi.fn<(kind: string) => Promise<boolean>>(() => Promise.resolve(true)) };

export const session = {
  defaultSession: {
    setPermissionRequestHandler: noting("lockDown", (handler: typeof permissions.request) => void (permissions.request = handler)),
    setPermissionCheckHandler: (handler: typeof permissions.check) => void (permissions.check = handler),
    setDevicePermissionHandler: (handler: typeof permissions.device) => void (permissions.device = handler),
    webRequest: { onBeforeRequest: (handler: typeof permissions.network) => void (permissions.network = handler) },
  },
};

export class StandInContents extends EventEmitter {
  readonly sent: unknown[][] = [];
  openHandler: (() => { action: string }) | null = null;
  destroyed = false;
  setWindowOpenHandler(handler: () => { action: string }): void {
    this.openHandler = handler;
  }
  isDestroyed(): boolean {
    return this.destroyed;
  }
  send(...message: unknown[]): void {
    this.sent.push(message);
  }
}

export const windows: BrowserWindow[] = [];

export class BrowserWindow extends EventEmitter {
  readonly webContents = new StandInContents();
  readonly show = vi.fn();
  readonly focus = vi.fn();
  readonly restore = vi.fn();
  readonly isMinimized = (): boolean => true;
  loaded: string | null = null;
  constructor(readonly options: { webPreferences: Record<string, unknown>; show: boolean }) {
    super();
    order.push("window");
    windows.push(this);
    app.emit("web-contents-created", {}, this.webContents);
  }
  loadURL(address: string): Promise<void> {
    this.loaded = address;
    return Promise.resolve();
  }
}

export const dialog = { showMessageBoxSync: vi.fn(() => 0) };

export const ipcHandlers = new Map<string, Handler>();
export const ipcMain = { handle: noting("serveBridge", (line: string, handler: Handler) => void ipcHandlers.set(line, handler)) };

export let menu: { label?: string; submenu?: { label?: string; click?: () => void; registerAccelerator?: boolean; accelerator?: string }[] }[] = [];
export const Menu = {
  buildFromTemplate: (template: typeof menu) => template,
  setApplicationMenu: noting("menu", (template: typeof menu) => void (menu = template)),
};

/** The page's side. */
export const exposed = new Map<string, unknown>();
export const contextBridge = { exposeInMainWorld: (name: string, api: unknown) => void exposed.set(name, api) };
export const ipcRenderer = Object.assign(new EventEmitter(), { invoke: vi.fn<(...args: unknown[]) => Promise<unknown>>() });

/** As new, between tests; modules under test are loaded again by the test. */
export function resetStandIn(): void {
  app.removeAllListeners();
  ipcRenderer.removeAllListeners();
  ipcRenderer.invoke.mockReset();
  dialog.showMessageBoxSync.mockReset().mockReturnValue(0);
  systemPreferences.askForMediaAccess.mockReset().mockResolvedValue(true);
  for (const list of [order, windows]) list.length = 0;
  for (const map of [switches, ipcHandlers, exposed]) map.clear();
  app.quit.mockClear();
  Object.assign(permissions, { request: null, check: null, device: null, network: null });
  scheme = null;
  menu = [];
  hasLock = true;
}
