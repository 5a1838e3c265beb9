import type { Episode } from "../../shared/episode";
import { listed } from "../words/count";

type Level = Episode["audience"]["level"];
type Group = Episode["audience"]["groups"][number];

const LEVELS: Readonly<Record<Level, string>> = { beginner: "beginners", intermediate: "intermediate lifters", advanced: "advanced lifters", mixed: "every level" };

/** Who a group is, as a sentence names them. */
export const GROUP_NAMES: Readonly<Record<Group, string>> = {
  teen: "teenagers", older: "older people", pregnant: "pregnant viewers", postnatal: "viewers after a birth", returning: "people coming back",
};

const DAYS = ["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"] as const;

/** The day of the week of an ISO date; a calendar day has no zone, so noon UTC stands for it. */
export function dayName(date: string): string {
  return DAYS[new Date(`${date}T12:00:00Z`).getUTCDay()] ?? date;
}

/** "06:45" as people say it: "6:45". */
export function timeOfDay(time: string): string {
  return time.replace(/^0(?=\d)/, "");
}

/**
 * What the sheet says about an episode under its title:
 * "For beginners, in kilograms. Harbour Street Strength Room, Thursday 6:45. Out on Sunday 12:00."
 */
export function factsSentence(episode: Pick<Episode, "audience" | "session" | "publish">): string {
  const { audience, session, publish } = episode;
  const whom = listed([LEVELS[audience.level], ...audience.groups.map((group) => GROUP_NAMES[group])]);
  const when = [session.date === null ? "" : dayName(session.date), session.time === null ? "" : timeOfDay(session.time)].filter(Boolean).join(" ");
  const where = [session.place.trim(), when].filter(Boolean).join(", ");
  return [
    `For ${whom}, in ${session.units === "kg" ? "kilograms" : "pounds"}.`,
    where === "" ? "No place or day yet." : `${where}.`,
    publish === null ? "No day to go out yet." : `Out on ${dayName(publish.date)} ${timeOfDay(publish.time)}.`,
  ].join(" ");
}
