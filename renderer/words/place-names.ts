import type { Place } from "../session/types";

export const PLACE_NAMES: Readonly<Record<Place, string>> = { write: "Write", train: "Train", shoot: "Shoot", speak: "Speak", publish: "Publish" };
