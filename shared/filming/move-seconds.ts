/** Carrying the tripod to another mark, framing and locking the exposure; seconds. Common practice, no source. */
export const MOVE_SECONDS = 45;
