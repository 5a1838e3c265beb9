import { idMaker } from "../../shared/episode";

/** Ids for what is typed. The core has no randomness of its own; this is where the screens bring it. */
export const newId = idMaker(Math.random);
