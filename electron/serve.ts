import { startHost, type Host } from "./host";
import { placesIn } from "./places";
import { VERSION } from "./version";
import { libraryFolder, openWorkspace } from "./workspace";

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
  const workspace = openWorkspace({ library, fonts: places.fonts, version: VERSION, window: "browser", start: choice.start ?? null });
  const host = await startHost({ workspace, renderer: places.renderer, port: choice.port ?? 0 });
  return { ...host, library };
}
