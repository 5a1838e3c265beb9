const format = new Intl.DateTimeFormat("en-GB", { weekday: "short", day: "numeric", month: "short", year: "numeric", hour: "2-digit", minute: "2-digit" });

/** When something was saved, in the reader's own zone: "Thu 4 Mar 2027, 10:42". */
export function savedAt(iso: string): string {
  const time = Date.parse(iso);
  return Number.isNaN(time) ? iso : format.format(time).replace(/^(\w+), /, "$1 ");
}
