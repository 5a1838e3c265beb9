/** The document: what an episode is, how it is read, changed and written. Imports nothing of the core. */
export * from "./schema";
export * from "./ids";
export * from "./create";
export * from "./names";
export * from "./find";
export * from "./memo";
export * from "./edit";
export { nextEpisode } from "./next";
export { migrate } from "./migrate";
export * from "./read";
export { episodeJsonSchema } from "./json-schema";
export { demoEpisode, newDemo } from "./demo";
