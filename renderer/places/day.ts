import { dayName, timeOfDay } from "../facts/facts-sentence";

const MONTHS = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"] as const;

/** "Sunday 7 March, 12:00" of a file's date and time. */
export function dayAndTime(date: string, time: string): string {
  const [, month = "1", day = ""] = date.split("-");
  return `${dayName(date)} ${Number(day)} ${MONTHS[Number(month) - 1] ?? ""}, ${timeOfDay(time)}`;
}
