import { setupOf, type Mark } from "../../filming";
import type { Block, Episode } from "../../episode";

/** At most so many characters, an ellipsis for what was cut. */
export const shorten = (text: string, most: number): string => (text.length > most ? `${Array.from(text).slice(0, most - 1).join("").trimEnd()}…` : text);

/** "1 minute", "9 minutes" */
export const minutesInWords = (minutes: number): string => `${minutes} ${minutes === 1 ? "minute" : "minutes"}`;

/** Clock time so many seconds after a start: "06:45" and 540 is "06:54"; past midnight it begins again. */
export function clockTime(start: string, seconds: number): string {
  const [hours = 0, minutes = 0] = start.split(":").map(Number);
  const whole = (hours * 60 + minutes + Math.round(seconds / 60)) % 1440;
  return `${String(Math.floor(whole / 60)).padStart(2, "0")}:${String(whole % 60).padStart(2, "0")}`;
}

const MONTHS = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];
const DAYS = ["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"];

/** "Thursday 4 March 2027", whatever the machine's own language and zone. */
export function dateInWords(iso: string): string {
  const day = new Date(`${iso}T00:00:00Z`);
  return `${DAYS[day.getUTCDay()] ?? ""} ${day.getUTCDate()} ${MONTHS[day.getUTCMonth()] ?? ""} ${day.getUTCFullYear()}`;
}

const HOLD: Readonly<Record<Episode["video"]["aspect"], string>> = {
  "16:9": "phone across (landscape)",
  "9:16": "phone upright (portrait)",
  both: "phone across (landscape), everything inside the upright strip in the middle",
};

/** How the phone is held and which lens, once for the block: "Main lens, phone across (landscape), level." */
export function holdInWords(episode: Episode, block: Block, marks: readonly Mark[]): string {
  const { lens } = setupOf(episode, block);
  const level = marks.every(({ stand }) => stand.tilt === 0) ? ", level" : "";
  const name = typeof lens === "number" ? `${lens} mm` : lens.charAt(0).toUpperCase() + lens.slice(1);
  return `${name} lens, ${HOLD[episode.video.aspect]}${level}.`;
}
