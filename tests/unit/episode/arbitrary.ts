import fc from "fast-check";
import { ASPECTS, BLOCK_KINDS, EPISODE_FORMAT, EPISODE_VERSION, FRAME_RATES, GROUPS, LEVELS, LINE_KINDS, RELATIONS, SET_ROLES, UNITS, type Block, type Episode } from "../../../shared/episode";

const unprintable = /[\u0000-\u001f\u007f\u2028\u2029]/;  
/** Any one-line text: words, prefixes that look typed, other scripts, nothing at all. */
export const lineText = fc.oneof(
  fc.string({ unit: "grapheme", maxLength: 60 }).filter((text) => !unprintable.test(text)),
  fc.constantFrom("", " ", "cue: brace", "3 x 8-10 @ 22 kg", "sets: 3 x 8", "½ × – é ł", "<script>alert(1)</script>", "__proto__", "../../etc"),
);
const name = lineText.map((text) => text.slice(0, 100));
const amount = fc.integer({ min: 0, max: 600 });
const actual = fc.record({
  set: fc.integer({ min: 1, max: 9 }),
  load: fc.option(fc.double({ min: 0, max: 300, noNaN: true }).map((n) => Math.abs(n)), { nil: null }),
  reps: fc.option(fc.integer({ min: 0, max: 30 }), { nil: null }),
  rir: fc.option(fc.constantFrom(0, 1, 2.5), { nil: null }),
});

const blockBody = fc.record({
  kind: fc.constantFrom(...BLOCK_KINDS),
  title: name,
  exercise: fc.option(fc.constantFrom("goblet-squat", "unknown-lift"), { nil: null }),
  station: name,
  minutes: fc.option(amount, { nil: null }),
  clipSeconds: fc.option(amount, { nil: null }),
  sets: fc.array(fc.record({ role: fc.constantFrom(...SET_ROLES), text: lineText }), { maxLength: 3 }),
  lines: fc.array(fc.record({ kind: fc.constantFrom(...LINE_KINDS), text: lineText }), { maxLength: 8 }),
  alternates: fc.array(fc.record({ text: lineText }), { maxLength: 2 }),
  actuals: fc.array(actual, { maxLength: 3 }),
  filming: fc.option(
    fc.record({
      marks: fc.array(fc.record({ mark: fc.constantFrom("side full", "any any", "gone"), bearing: fc.integer({ min: -180, max: 180 }), distance: fc.integer({ min: 1, max: 9 }) }), { maxLength: 2 }),
      filmed: fc.array(fc.record({ shot: fc.constantFrom("id-1", "gone"), set: fc.option(fc.integer({ min: 1, max: 9 }), { nil: null }), got: fc.boolean() }), { maxLength: 2 }),
    }),
    { nil: null },
  ),
});

/** Any valid episode; ids are numbered so that they are unique. */
export const anyEpisode: fc.Arbitrary<Episode> = fc
  .record({
    title: name,
    series: fc.record({ name, number: fc.option(fc.integer({ min: 1, max: 99 }), { nil: null }), coach: name, quiet: fc.subarray(["mirrors", "alternate"]) }),
    level: fc.constantFrom(...LEVELS),
    groups: fc.subarray([...GROUPS]),
    place: name,
    date: fc.option(fc.constantFrom("2027-03-04", "2028-02-29"), { nil: null }),
    time: fc.option(fc.constantFrom("06:45", "23:59"), { nil: null }),
    slotMinutes: fc.integer({ min: 1, max: 180 }),
    kit: fc.array(name, { maxLength: 4 }),
    units: fc.constantFrom(...UNITS),
    targetSeconds: fc.integer({ min: 10, max: 3600 }),
    frameRate: fc.constantFrom(...FRAME_RATES),
    aspect: fc.constantFrom(...ASPECTS),
    publish: fc.option(fc.constant({ date: "2027-03-07", time: "12:00", zone: "Etc/UTC" }), { nil: null }),
    partner: fc.option(fc.record({ name, relation: fc.constantFrom(...RELATIONS), disclosure: lineText }), { nil: null }),
    waiver: fc.option(fc.record({ text: lineText, reason: fc.constant("Checked with the gym.") }), { nil: null }),
    blocks: fc.array(blockBody, { maxLength: 6 }),
  })
  .map((parts) => {
    let next = 0;
    const id = (): string => `id-${++next}`;
    const blocks: Block[] = parts.blocks.map((body) => ({
      id: id(), kind: body.kind, title: body.title, exercise: body.exercise, station: body.station, minutes: body.minutes, clipSeconds: body.clipSeconds,
      sets: body.sets.map((set) => ({ id: id(), ...set })),
      lines: body.lines.map((line) => ({ id: id(), ...line })),
      alternates: body.alternates.map((alternate) => ({ id: id(), ...alternate })),
      actuals: body.actuals,
      ...(body.filming ? { filming: body.filming } : {}),
    }));
    return {
      format: EPISODE_FORMAT, version: EPISODE_VERSION, id: "episode", title: parts.title, series: parts.series,
      audience: { level: parts.level, groups: parts.groups },
      session: { place: parts.place, date: parts.date, time: parts.time, slotMinutes: parts.slotMinutes, kit: parts.kit, units: parts.units, alone: true, cameras: 1 },
      video: { targetSeconds: parts.targetSeconds, frameRate: parts.frameRate, aspect: parts.aspect },
      publish: parts.publish,
      partners: parts.partner ? [{ id: "partner", ...parts.partner }] : [],
      blocks, carryOver: [],
      waivers: parts.waiver ? [{ id: "waiver", rule: "closing", ruleVersion: 1, block: null, line: null, ...parts.waiver }] : [],
    };
  });
