/** The camera: what a shot line says, where the camera stands, when it moves, what card and battery must hold, timecode. */
export { SHOT_SIZES, type Shot, type ShotSize, type Stand } from "./types";
export { parseShotLine } from "./shot-line";
export { printShotLine } from "./print-shot";
export { ANGLE_NAMES, SIZE_NAMES } from "./shot-words";
export { secondsOf, shotSeconds, shotsOf, type LineShot } from "./shots";
export { angleOfView, distanceToFill, focalLength, FRAMES, LENSES, type Aspect, type Lens } from "./lens";
export { standAt, standFor, STEP_METRES, USUAL_SETUP, type FilmingSetup } from "./stand";
export { markKey, marksOf, setupOf, type Mark } from "./marks";
export { bodyOf, type Body } from "./body";
export { polarOf, spotAt, type Spot } from "./bearings";
export * from "./floor";
export * from "./wants";
export { MOVE_SECONDS } from "./move-seconds";
export { cardInWords, cardPlan, RESERVE_GIGABYTES, type CardPlan } from "./card";
export { formatNamed, formatOf, megabytesPerMinute, recordedMinutes, recording, RECORDING_FORMATS, recordingOf, type Recording, type RecordingFormat } from "./recording";
export { framesPerDay } from "./frame-rates";
export { framesToSeconds, framesToTimecode, secondsToFrames, timecodeToFrames } from "./timecode";
export * from "./coverage";
