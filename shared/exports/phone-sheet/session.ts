import { blockName, episodeName, linesOf, seriesName, type Block, type Episode } from "../../episode";
import { bearingInWords, floorMark, floorOf, markWords, setupOf, standOf, stepsInWords, tiltInWords, type BlockFloor, type Mark, type Shot } from "../../filming";
import { shootPlan, type ShootBlock, type ShootPlan, type ShootSet } from "../../shoot-plan";
import { parseSetLine, plannedSets, repsOfSet, type LoadUnit, type PlannedSet } from "../../training";
import { fileNameFor } from "../file-name";
import { convertLoad } from "../loads";
import { dateInWords } from "../shot-list/measures";
import type { PhoneBlock, PhoneExtra, PhoneMark, PhoneSession, PhoneSet } from "./types";

/** The rules of the house and of the people in it; common practice, no source. */
const REMINDERS = [
  "Ask at the desk before you film, and keep to the gym's rules.",
  "Nobody in the picture who has not said yes, mirrors included. Somebody walks in: stop, or ask.",
  "Keep the aisle and the way out free; tripod legs trip people.",
  "Sharp pain, dizziness, a bad feeling: stop the set. No shot is worth it.",
] as const;

const HOLD: Readonly<Record<Episode["video"]["aspect"], string>> = {
  "16:9": "Phone across (landscape)",
  "9:16": "Phone upright (portrait)",
  both: "Phone across, everything inside the upright strip in the middle",
};

const first = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "Side, full": as short as a shot can be called. */
const shortOf = ({ angle, size }: Pick<Shot, "angle" | "size">): string =>
  first([angle ?? "any angle", size === null || size === angle ? "" : size].filter(Boolean).join(", "));

const weightUnit = (unit: LoadUnit): "kg" | "lb" | null => (unit.endsWith("kg") ? "kg" : unit.endsWith("lb") ? "lb" : null);

/** What the set line asks of one set, as numbers; the least of a range, so that nobody is credited with more than they typed. */
function plannedOf(episode: Episode, block: Block, set: PlannedSet, at: number): PhoneSet["planned"] {
  const line = block.sets.find(({ id }) => id === set.line);
  const parsed = line ? parseSetLine(line.text) : null;
  if (!parsed?.ok) return { load: null, reps: null, rir: null };
  const { scheme } = parsed;
  const unit = scheme.load ? weightUnit(scheme.load.unit) : null;
  const value = scheme.load?.value ?? null;
  const load = unit === null || value === null || value < 0 ? null : unit === episode.session.units ? value : convertLoad(value, episode.session.units);
  return { load, reps: repsOfSet(scheme, at)?.min ?? null, rir: scheme.rir ?? null };
}

function setsOf(episode: Episode, { block, sets }: ShootBlock): PhoneSet[] {
  const planned = plannedSets(block);
  return sets.map((set, i): PhoneSet => {
    const from = planned.find(({ role, number }) => role === set.role && number === set.number);
    // The set's place in its own line, for a ladder's rungs.
    const at = from ? planned.filter(({ line, number }) => line === from.line && number <= from.number).length : 0;
    return {
      id: set.id, place: placeOf(set, i), role: set.role, number: set.number, name: set.name, work: set.work, load: set.load,
      seconds: Math.round(set.workSeconds), restSeconds: Math.round(set.restSeconds), planned: from && set.role === "working" ? plannedOf(episode, block, from, at) : null,
    };
  });
}

const placeOf = (set: ShootSet, index: number): number => Number(/:(\d+)$/.exec(set.id)?.[1] ?? index + 1);

/** A mark as it stands on the floor: where the coach put it, else where its shots ask for it. */
function markOf(mark: Mark, floor: BlockFloor): PhoneMark {
  const { distance, steps, height, level, tilt } = standOf(floor, mark);
  const onFloor = floorMark(floor, mark);
  const moved = onFloor?.isMoved ? [`moved: ${bearingInWords(onFloor.bearing)}`] : [];
  return {
    key: mark.key, letter: mark.letter, words: [markWords(mark), ...moved].join("; "), distance, steps: stepsInWords(steps), height, level,
    tilt: tiltInWords(tilt), warnings: onFloor?.problems ?? [],
  };
}

function blockOf(episode: Episode, shoot: ShootBlock): PhoneBlock {
  const { block, station, wants, marks } = shoot;
  const floor = floorOf(episode, block);
  return {
    id: block.id, kind: block.kind, name: blockName(block), station,
    alternates: block.alternates.map(({ text }) => text.trim()).filter(Boolean),
    cautions: linesOf(block, "caution").map(({ text }) => text),
    say: linesOf(block, "say").map(({ text }) => text.replace(/\s*\/\s*/g, " ").trim()).filter(Boolean),
    sets: setsOf(episode, shoot),
    marks: marks.map((mark) => markOf(mark, floor)),
    shots: wants.map(({ id, line, mark, need, seconds, shot }) => ({ id, line, mark, need, seconds, subject: shot.subject || "the whole movement", short: shortOf(shot) })),
  };
}

/** The opening and the closing where no line asks for them, and the sound of the empty room. */
function extrasOf(blocks: readonly PhoneBlock[]): PhoneExtra[] {
  const bare = (kind: "opening" | "closing"): { readonly block: string | null } | null => {
    const ofKind = blocks.filter((block) => block.kind === kind);
    return ofKind.some(({ shots }) => shots.length > 0) ? null : { block: ofKind[0]?.id ?? null };
  };
  const [opening, closing] = [bare("opening"), bare("closing")];
  return [
    ...(opening?.block ? [{ what: "opening", ...opening, words: "Opening: look into the lens, hold still for three seconds before and after the words." } as const] : []),
    { what: "room-tone", block: null, words: "Room tone: camera running, half a minute, nobody speaks." },
    ...(closing ? [{ what: "closing", ...closing, words: "Closing: no shot is planned for it. Say goodbye to the lens, then hold still for three seconds." } as const] : []),
  ];
}

/** A short name for what the phone plans with: FNV-1a, 32 bits. @source Fowler, Noll, Vo: FNV hash, offset 2166136261, prime 16777619 */
function fingerprint(text: string): string {
  let hash = 2166136261;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 16777619);
  return (hash >>> 0).toString(36);
}

function when({ date, time }: Episode["session"]): string {
  return [date === null ? "" : dateInWords(date), time ?? ""].filter(Boolean).join(", ");
}

/** The session as the phone carries it. The same episode gives the same session. @param plan - of this episode */
export function phoneSession(episode: Episode, plan: ShootPlan = shootPlan(episode)): PhoneSession {
  const blocks = plan.blocks.map((block) => blockOf(episode, block));
  const extras = extrasOf(blocks);
  const ending = blocks.filter(({ kind }) => kind === "closing").flatMap(({ shots }) => shots);
  const needed = ending.filter(({ need }) => need === "must");
  const lens = episode.blocks[0] ? setupOf(episode, episode.blocks[0]).lens : "main";
  return {
    version: 1, episode: episode.id, plan: fingerprint(JSON.stringify([plan.problem, blocks])),
    title: episodeName(episode), series: seriesName(episode), when: when(episode.session), where: episode.session.place,
    units: episode.session.units, stem: fileNameFor(episode, "phone-sheet.html").replace(/-phone-sheet\.html$/, ""),
    hold: `${HOLD[episode.video.aspect]}, ${typeof lens === "number" ? `${lens} mm` : `${lens} lens`}.`,
    kit: episode.session.kit, reminders: REMINDERS, problem: plan.problem, coverage: plan.plan, blocks, extras, closing: (needed.length > 0 ? needed : ending).map(({ id }) => id),
  };
}
