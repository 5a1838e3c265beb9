import type { Block, Units } from "../../episode";
import { cameraMoves, shotsOf, type LineShot, type Mark } from "../../filming";
import type { PlannedSet } from "../../training";
import type { LogPart } from "../paper";

/** One row to tick: what is done, which mark films it, what must be seen. */
export interface FilmRow {
  /** "Set 2" */
  readonly label: string;
  /** "22 kg each hand" */
  readonly under: string;
  /** "A, side, full" */
  readonly title: string;
  readonly see: readonly string[];
  /** What to do with the camera afterwards, and whether there is time for it; null for nothing. */
  readonly then: string | null;
  readonly log: readonly (readonly LogPart[])[];
}

type Shooting = LineShot["shot"];

/** Points of line to write a load and a count on. */
const BLANK = { load: 38, count: 34 } as const;

const isInsert = (shot: Shooting): boolean => shot.angle === "insert" || shot.size === "insert";
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const seconds = (value: number): string => `${Math.round(value)} s`;

/** "side, full"; what the line does not name is free. */
function view(shot: Shooting): string {
  if (shot.angle === "insert" || (shot.size === "insert" && shot.angle === null)) return "insert, close";
  return [shot.angle ?? "any angle", shot.size ?? ""].filter(Boolean).join(", ");
}

/** A row's words for the shots filmed on it. */
function shown(shots: readonly LineShot[], letters: ReadonlyMap<string, string>): Pick<FilmRow, "title" | "see"> {
  const titles = shots.map(({ line, shot }) => [letters.get(line.id) ?? "", view(shot)].filter(Boolean).join(", "));
  const see = shots.map(({ line, shot }) => {
    const facts = [shots.length > 1 ? letters.get(line.id) ?? "" : "", shot.need === "nice" ? "nice to have" : "", shot.seconds === null ? "" : seconds(shot.seconds)].filter(Boolean).join(", ");
    const subject = shot.subject || (facts === "" ? "as the mark shows it" : "");
    return capital([facts, subject].filter(Boolean).join(": "));
  });
  return { title: [...new Set(titles)].join("  +  "), see };
}

/** Lines to log a set on: load where one is lifted, then reps, metres or seconds; one line a side for each-side work. */
export function logLines(set: PlannedSet, units: Units): LogPart[][] {
  const unit = /^[\d.]+(?: to [\d.]+)? (m|s)\b/.exec(set.work)?.[1] ?? "reps";
  const count: LogPart[] = [{ blank: BLANK.count }, unit];
  const load: LogPart[] = /^bodyweight$/i.test(set.load) ? [] : [{ blank: BLANK.load }, units];
  if (!/each side/i.test(set.work)) return [[...load, ...count]];
  return [["left", ...load, ...count], ["right", ...load, ...count]];
}

/** Where the camera, or each of two, goes after a working set, in words. */
function moveAfter(set: PlannedSet, block: Block, shots: readonly LineShot[], letters: ReadonlyMap<string, string>, cameras: number): string | null {
  const move = set.role === "working" ? cameraMoves(block).find(({ afterSet }) => afterSet === set.number) : undefined;
  if (!move) return null;
  const later = shots.filter(({ shot }) => shot.on !== "ramp-up" && shot.on !== "demonstration" && (shot.sets ?? []).some((number) => number > set.number));
  const nextSet = Math.min(...later.flatMap(({ shot }) => (shot.sets ?? []).filter((number) => number > set.number)));
  const lettersOf = (number: number): string[] => shots.flatMap(({ line, shot }) => (shot.sets?.includes(number) ? letters.get(line.id) ?? [] : []));
  const here = lettersOf(set.number);
  const next = [...new Set(later.flatMap(({ line, shot }) => (shot.sets?.includes(nextSet) ? letters.get(line.id) ?? [] : [])))].filter((letter) => !here.includes(letter)).slice(0, cameras);
  const to = `the camera${next.length > 1 ? "s" : ""} to ${next.join(" and ") || "the next mark"}`;
  const short = move.seconds - set.restSeconds;
  return short > 0
    ? `Then move ${to}: ${seconds(move.seconds)}, ${set.restSeconds > 0 ? `${seconds(short)} more than the ${seconds(set.restSeconds)} rest` : "and no rest is planned for it"}.`
    : `Then move ${to}: ${seconds(move.seconds)} of the ${seconds(set.restSeconds)} rest.`;
}

/**
 * What is filmed in a block, in the order it happens: ramp-up sets, working sets, shots for any set, demonstrations, inserts,
 * and last those that name a set nobody planned.
 * @param cameras - how many there are to move between sets
 */
export function filmRows(block: Block, sets: readonly PlannedSet[], marks: readonly Mark[], units: Units, cameras = 1): FilmRow[] {
  const shots = shotsOf(block);
  const letters = new Map(marks.flatMap((mark) => mark.shots.map(({ line }) => [line.id, mark.letter] as const)));
  const used = new Set<LineShot>();
  const take = (wanted: (shot: Shooting) => boolean): LineShot[] => {
    const taken = shots.filter((item) => wanted(item.shot));
    taken.forEach((item) => used.add(item));
    return taken;
  };
  const ramps = sets.filter(({ role }) => role === "ramp-up").length;

  const setRows = sets.map((set): FilmRow => {
    const mine = set.role === "ramp-up"
      ? take((shot) => shot.on === "ramp-up" && (shot.sets ? shot.sets.includes(set.number) : set.number === 1))
      : take((shot) => shot.on !== "ramp-up" && shot.on !== "demonstration" && (shot.sets?.includes(set.number) ?? false));
    const words = mine.length > 0 ? shown(mine, letters) : { title: "", see: ["No shot planned: keep the camera running for a spare take."] };
    return {
      label: set.role === "ramp-up" ? (ramps === 1 ? "Ramp" : `Ramp ${set.number}`) : `Set ${set.number}`,
      under: set.load || set.work,
      ...words,
      then: moveAfter(set, block, shots, letters, cameras),
      log: logLines(set, units),
    };
  });

  const single = (label: string, items: readonly LineShot[], missing = ""): FilmRow[] =>
    items.map((item, at) => {
      const words = shown([item], letters);
      return {
        label: items.length > 1 && label !== "" ? `${label} ${at + 1}` : label,
        under: item.shot.seconds === null ? "" : seconds(item.shot.seconds),
        title: words.title,
        see: [...shown([{ ...item, shot: { ...item.shot, seconds: null } }], letters).see, ...(missing === "" ? [] : [missing])],
        then: null,
        log: [],
      };
    });

  const free = (shot: Shooting): boolean => shot.sets === null && shot.on !== "ramp-up";
  const demos = take((shot) => shot.on === "demonstration");
  const inserts = take((shot) => shot.on !== "demonstration" && free(shot) && isInsert(shot));
  const open = take((shot) => shot.on !== "demonstration" && free(shot) && !isInsert(shot));
  const lost = shots.filter((item) => !used.has(item));
  return [
    ...setRows,
    ...single(sets.length > 0 ? "Any set" : "Shot", open),
    ...single("Demo", demos),
    ...single("Insert", inserts),
    ...single("Extra", lost, sets.length > 0 ? "The set it names is not planned: film it on another." : "It names a set, but no sets are planned."),
  ];
}
