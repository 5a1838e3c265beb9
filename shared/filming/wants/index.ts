/** What the finished video needs a picture or a sound of, and which shot line gives it. */
export type { EpisodeWant } from "./types";
export { wantsOf } from "./wants-of";
export { blockWantsOf } from "./block-wants";
export { cueWantsOf } from "./cues";
export { usualShot } from "./usual";
