import type { Units } from "../../episode";
import type { Mark } from "../../filming";
import type { ShootBlock, ShootMove, ShootSet, ShootWant } from "../../shoot-plan";
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

/** Points of line to write a load and a count on. */
const BLANK = { load: 38, count: 34 } as const;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const seconds = (value: number): string => `${Math.round(value)} s`;

/** "A, side, full"; what the shots do not name is free. */
export function markTitle({ letter, angle, size }: Mark): string {
  const view = angle === "insert" || (size === "insert" && angle === null) ? ["insert, close"] : [angle ?? "any angle", size ?? ""];
  return [letter, ...view].filter(Boolean).join(", ");
}

/** Lines to log a set on: load where one is lifted, then reps, metres or seconds; one line a side for each-side work. */
export function logLines(set: Pick<PlannedSet, "work" | "load">, units: Units): LogPart[][] {
  const unit = /^[\d.]+(?: to [\d.]+)? (m|s)\b/.exec(set.work)?.[1] ?? "reps";
  const count: LogPart[] = [{ blank: BLANK.count }, unit];
  const load: LogPart[] = /^bodyweight$/i.test(set.load) ? [] : [{ blank: BLANK.load }, units];
  if (!/each side/i.test(set.work)) return [[...load, ...count]];
  return [["left", ...load, ...count], ["right", ...load, ...count]];
}

/** "Ramp 2", "Set 3", "Demo", "Run 1": short, for the margin. */
function labelOf({ role, number }: ShootSet, of: number): string {
  const word = { "ramp-up": "Ramp", working: "Set", demonstration: "Demo", run: "Shot" }[role];
  return role === "working" || of > 1 ? `${word} ${number}` : word;
}

/** What a want asks to be seen: "20 s, nice to have: the whole arm path". */
function seenWords({ shot, need }: ShootWant, letter: string): string {
  const facts = [letter, need === "nice" ? "nice to have" : "", shot.seconds === null ? "" : seconds(shot.seconds)].filter(Boolean).join(", ");
  return capital([facts, shot.subject || "as the mark shows it"].filter(Boolean).join(": "));
}

/** Where the cameras go after a set, in words, and whether the rest holds it. */
function moveAfter(set: ShootSet, moves: readonly ShootMove[], letterOf: (mark: string) => string, cameras: number): string | null {
  if (moves.length === 0) return null;
  const each = moves.map(({ camera, to }) => `${cameras > 1 ? `camera ${camera}` : "the camera"} to ${letterOf(to)}`);
  const taken = moves.reduce((sum, move) => sum + move.seconds, 0);
  const over = taken - set.restSeconds;
  // Between the runs of a block without sets nobody rests; the planned time has room for the move or it has not.
  if (set.role === "run") return `Then move ${each.join(" and ")}: ${seconds(taken)}${over > 0 ? `, ${seconds(over)} more than the block has` : ""}.`;
  const rest = `${seconds(set.restSeconds)} rest`;
  return over > 0
    ? `Then move ${each.join(" and ")}: ${seconds(taken)}, ${set.restSeconds > 0 ? `${seconds(over)} more than the ${rest}` : "and no rest is planned for it"}.`
    : `Then move ${each.join(" and ")}: ${seconds(taken)} of the ${rest}.`;
}

/**
 * What is filmed in a block, set by set, as the plan of the shoot has it: demonstrations, ramp-up sets, working sets, or the runs of a block
 * without sets; last what no set films, with the reason.
 * @param planned - the block's sets with loads in the unit of the paper, as they are done
 */
export function filmRows(shoot: ShootBlock, planned: readonly PlannedSet[], units: Units, cameras = 1): FilmRow[] {
  const markOf = (key: string): Mark | undefined => shoot.marks.find((mark) => mark.key === key);
  const letterOf = (key: string): string => markOf(key)?.letter ?? key;
  const done = shoot.sets.filter(({ role }) => role === "ramp-up" || role === "working");

  const setRows = shoot.sets.map((set, at): FilmRow => {
    const told = planned[done.indexOf(set)];
    const stands = shoot.stands.filter((stand) => stand.set === set.id);
    const filmed = stands.map((stand) => ({
      stand, mark: markOf(stand.mark),
      wants: shoot.shots.filter((shot) => shot.set === set.id && shot.camera === stand.camera).flatMap((shot) => shoot.wants.find(({ id }) => id === shot.want) ?? []),
    })).filter(({ wants }) => wants.length > 0);
    const spare = stands.filter(({ camera }) => !filmed.some(({ stand }) => stand.camera === camera)).map(({ mark }) => letterOf(mark));
    const next = shoot.sets[at + 1];
    const see = filmed.flatMap(({ mark, wants }) => wants.map((want) => seenWords(want, filmed.length > 1 ? (mark?.letter ?? "") : "")));
    const idle = set.role === "run" || shoot.wants.length === 0 ? [] : filmed.length === 0 ? [`Nothing new to film${spare[0] === undefined ? "" : ` from ${spare.join(" and ")}`}: keep the camera running for a spare take.`] : [];
    return {
      label: labelOf(set, shoot.sets.filter(({ role }) => role === set.role).length),
      under: told ? told.load || told.work : set.role === "demonstration" ? "no load" : filmed.length === 1 && filmed[0]?.wants.length === 1 && filmed[0].wants[0]?.shot.seconds ? seconds(filmed[0].wants[0].shot.seconds) : "",
      title: filmed.map(({ stand, mark }) => `${cameras > 1 ? `Camera ${stand.camera}: ` : ""}${mark ? markTitle(mark) : stand.mark}`).join("  +  "),
      see: see.length > 0 ? see : shoot.wants.length === 0 && set.role !== "run" ? ["No shot planned: keep the camera running for a spare take."] : idle,
      then: next ? moveAfter(set, shoot.moves.filter(({ before }) => before === next.id), letterOf, cameras) : null,
      log: told ? logLines(told, units) : [],
    };
  });

  const lost = shoot.lost.flatMap(({ want: id, why }) => {
    const want = shoot.wants.find((each) => each.id === id);
    return want ? [{ want, why }] : [];
  });
  return [
    ...(shoot.wants.length === 0 && done.length === 0 ? [] : setRows),
    ...lost.map(({ want, why }): FilmRow => ({ label: "Lost", under: want.need === "nice" ? "nice" : "must", title: `No set films ${letterOf(want.mark)}`, see: [seenWords(want, ""), `${why} Film it apart if you can.`], then: null, log: [] })),
  ];
}
