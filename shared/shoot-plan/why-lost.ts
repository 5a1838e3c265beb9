import { ANGLE_NAMES, SIZE_NAMES, type CoverageStand, type Mark } from "../filming";
import { KIND_OF_ROLE } from "./sets";
import type { ShootLoss, ShootSet } from "./types";
import { numberOf, type BothWants } from "./wants";

const KIND_WORDS = { ramp: "ramp-up set", working: "working set", demo: "demonstration" } as const;

/** "from the side, head to toe" */
function markInWords({ angle, size }: Mark): string {
  return [angle === null ? "" : ANGLE_NAMES[angle], size === null || size === angle ? "" : SIZE_NAMES[size]].filter(Boolean).join(", ") || "from any side";
}

/** Why a want stays unfilmed, in one sentence: there is no such set, or the sets it could be filmed on show something else. */
export function whyLost({ shown, planned }: BothWants, sets: readonly ShootSet[], marks: readonly Mark[], stands: readonly CoverageStand[]): ShootLoss {
  const loss = (why: string): ShootLoss => ({ want: shown.id, why });
  const number = numberOf(shown);
  const [only] = planned.sets ?? [];
  if (planned.sets && only === undefined) return loss(`There is no ${shown.shot.on === "ramp-up" ? "ramp-up set" : "set"} ${number ?? ""}.`);
  if (planned.kind !== "any" && !sets.some(({ role }) => KIND_OF_ROLE[role] === planned.kind)) return loss(`There is no ${KIND_WORDS[planned.kind]}.`);
  const set = sets.find(({ id }) => id === only);
  if (!set) return loss("Every set it could be filmed on shows something else.");
  const shows = stands.filter((stand) => stand.set === set.id).flatMap((stand) => marks.find(({ key }) => key === stand.mark) ?? []);
  return loss(shows.length === 0 ? `${set.name} is not filmed.` : `${set.name} is filmed ${shows.map(markInWords).join(" and ")}.`);
}
