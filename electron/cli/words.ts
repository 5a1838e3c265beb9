/** "1 block", "3 blocks". */
export const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

/** Seconds as "4:07", or "1:02:30" from an hour up; rounded to the second. */
export function clockTime(seconds: number): string {
  const whole = Math.round(seconds);
  const two = (n: number): string => String(n).padStart(2, "0");
  const hours = Math.floor(whole / 3600);
  const minutes = Math.floor(whole / 60) % 60;
  return hours > 0 ? `${hours}:${two(minutes)}:${two(whole % 60)}` : `${minutes}:${two(whole % 60)}`;
}

/** Rows with their columns aligned; the first column to the left, the others to the right. */
export function table(rows: readonly (readonly string[])[]): string {
  const widths: number[] = [];
  for (const row of rows) row.forEach((cell, i) => (widths[i] = Math.max(widths[i] ?? 0, cell.length)));
  const line = (row: readonly string[]): string =>
    row.map((cell, i) => (i === 0 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0))).join("  ").trimEnd();
  return rows.map((row) => `${line(row)}\n`).join("");
}
