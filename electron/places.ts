import { join } from "node:path";

/** Where the built parts lie. @param dist - the dist folder of this app */
export function placesIn(dist: string): { readonly renderer: string; readonly fonts: string; readonly preload: string; readonly phoneSheet: string } {
  return { renderer: join(dist, "renderer"), fonts: join(dist, "fonts"), preload: join(dist, "electron", "preload.cjs"), phoneSheet: join(dist, "phone-sheet") };
}
