import type { Api } from "../../shared/bridge";
import { httpApi } from "./http-api";

declare global {
  interface Window {
    /** Put there by the desktop window's preload; absent in a browser. */
    readonly repwright?: Api;
  }
}

/** The bridge of the window this page runs in. */
export const connect = (): Api => window.repwright ?? httpApi();
