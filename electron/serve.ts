import { stat } from "node:fs/promises";
import { startHost, type Host } from "./host";
import { placesIn } from "./places";
import { VERSION } from "./version";
import { libraryFolder, openWorkspace } from "./workspace";
import { errorCode } from "./workspace/sentences";

export interface ServeChoice {
  /** The dist folder of this app. */
  readonly dist: string;
  readonly library?: string | undefined;
  readonly port?: number | undefined;
  readonly start?: "demo" | "last" | null;
}

/** The workspace and its loopback host, for a browser window. Used by `npm start` and by `repwright serve`. */
export async function serve(choice: ServeChoice): Promise<Host & { readonly library: string }> {
  const places = placesIn(choice.dist);
  const library = libraryFolder(choice.library);
  // A library that is not there yet is made by the first save; one that can never be a folder is better said now.
  const facts = await stat(library).catch((error: unknown) => (errorCode(error) === "ENOENT" ? null : Promise.reject(error)));
  if (facts?.isDirectory() === false) throw Object.assign(new Error(`${library} is a file, no folder`), { code: "ENOTDIR" });
  const workspace = openWorkspace({ library, fonts: places.fonts, phoneSheet: places.phoneSheet, version: VERSION, window: "browser", start: choice.start ?? null });
  const host = await startHost({ workspace, renderer: places.renderer, port: choice.port ?? 0 });
  return { ...host, library };
}
