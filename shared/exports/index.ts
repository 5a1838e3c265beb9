import { handoutPdf } from "./handout";
import type { DocumentId, Exporter } from "./types";

/** Documents: pure functions from an episode to the bytes of a file. */
export * from "./types";
export { fileNameFor } from "./file-name";
export { handoutPdf };

/** Every document there is, in the order a coach needs them. */
export const EXPORTERS: readonly Exporter[] = [handoutPdf];

/** @throws {Error} when no exporter has the id */
export function exporterFor(id: DocumentId): Exporter {
  const found = EXPORTERS.find((exporter) => exporter.meta.id === id);
  if (!found) throw new Error(`exporterFor: there is no document "${id}"`);
  return found;
}
