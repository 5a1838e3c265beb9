import { z } from "zod";

/** The newest file version this program writes; older ones are migrated, newer ones refused. */
export const EPISODE_VERSION = 2;
export const EPISODE_FORMAT = "repwright-episode";

/** Longest text of one line, in characters. A paragraph of speech fits; a pasted book does not. */
export const MAX_TEXT = 4000;
export const MAX_BLOCKS = 400;
export const MAX_LINES = 400;

const id = z.string().regex(/^[A-Za-z0-9_-]{1,64}$/, "expected 1 to 64 letters, digits, - or _");
/** One line of text: no line breaks and no control characters, so it prints and diffs as one line. */
const text = z
  .string()
  .max(MAX_TEXT)
   
  .regex(/^[^\u0000-\u001f\u007f\u2028\u2029]*$/, "expected one line of text without control characters");
const name = text.max(200);
const seconds = z.number().min(0).max(86_400);

export const BLOCK_KINDS = ["opening", "warm-up", "exercise", "talk", "cool-down", "closing"] as const;
export const LINE_KINDS = ["cue", "avoid", "caution", "say", "shot", "note"] as const;
export const SET_ROLES = ["ramp-up", "working"] as const;
export const FRAME_RATES = ["23.976", "24", "25", "29.97", "29.97 drop", "30", "50", "59.94", "59.94 drop", "60"] as const;
export const ASPECTS = ["16:9", "9:16", "both"] as const;
export const LEVELS = ["beginner", "intermediate", "advanced", "mixed"] as const;
export const GROUPS = ["teen", "older", "pregnant", "postnatal", "returning"] as const;
export const RELATIONS = ["paid", "gifted", "affiliate", "own brand"] as const;
export const UNITS = ["kg", "lb"] as const;
export const LENS_NAMES = ["ultra-wide", "main", "tele"] as const;
/** Sides of a station as the person who trains there sees them, facing ahead; lying down, ahead is where the head points. */
export const FLOOR_SIDES = ["ahead", "behind", "left", "right"] as const;

export const lineSchema = z.strictObject({ id, kind: z.enum(LINE_KINDS), text });

/** A scheme as the coach writes it; its meaning is read by the training engine. */
export const setLineSchema = z.strictObject({ id, role: z.enum(SET_ROLES), text });

/** What to do when the station is taken. */
export const alternateSchema = z.strictObject({ id, text });

/** What was really lifted in one set. Loads in the session's unit. */
export const actualSchema = z.strictObject({
  set: z.int().min(1).max(100),
  load: z.number().min(0).max(2000).nullable(),
  reps: z.int().min(0).max(1000).nullable(),
  rir: z.number().min(0).max(10).nullable(),
});

/** Which camera mark, as filming names it: an angle and a size, "side full". A name that no shot asks for any more is kept and of no effect. */
const markName = text.min(1).max(60);

/** Where the coach wants a mark to stand: degrees from ahead, towards the left up to 180; metres along the floor. */
export const placedMarkSchema = z.strictObject({ mark: markName, bearing: z.number().min(-180).max(180), distance: z.number().min(0.1).max(50) });

/** What became of a shot on the day: the shot's line, the set it was filmed on (counted through the block; null for none), in the box or lost. */
export const filmedSchema = z.strictObject({ shot: id, set: z.int().min(1).max(200).nullable(), got: z.boolean() });

export const blockFilmingSchema = z.strictObject({ marks: z.array(placedMarkSchema).max(60), filmed: z.array(filmedSchema).max(400) });

const metres = z.number().min(0.1).max(100);
/** The room round a station: metres from the middle of the person to each wall (null: none near), walls with a mirror, the side where people walk past. */
export const floorSchema = z.strictObject({
  station: name,
  walls: z.strictObject({ ahead: metres.nullable(), behind: metres.nullable(), left: metres.nullable(), right: metres.nullable() }),
  mirrors: z.array(z.enum(FLOOR_SIDES)).max(4),
  aisle: z.enum(FLOOR_SIDES).nullable(),
});

/** What the session is filmed with; left out, all is as usual. */
export const sessionFilmingSchema = z.strictObject({
  /** A phone's lens by name, or a 35 mm-equivalent focal length in millimetres. */
  lens: z.union([z.enum(LENS_NAMES), z.number().min(5).max(1200)]),
  /** Metres. */
  stature: z.number().min(1).max(2.5),
  /** A recording format as filming names it: "1080p30 HEVC". */
  format: name,
  freeGigabytes: z.number().min(0).max(100_000).nullable(),
  /** Minutes of recording the battery lasts. */
  batteryMinutes: z.number().min(1).max(10_000).nullable(),
});

export const blockSchema = z.strictObject({
  id,
  kind: z.enum(BLOCK_KINDS),
  title: name,
  /** Catalogue id, or null for a block that is no exercise or one the catalogue does not know. */
  exercise: id.nullable(),
  /** Where it happens; blocks in a row at the same station need no change of station. Empty: the exercise's own. */
  station: name,
  /** Floor minutes as planned; null lets the gym clock compute them. */
  minutes: z.number().min(0).max(600).nullable(),
  /** Seconds of the finished clip; null until it is cut or decided. */
  clipSeconds: seconds.nullable(),
  sets: z.array(setLineSchema).max(40),
  lines: z.array(lineSchema).max(MAX_LINES),
  alternates: z.array(alternateSchema).max(20),
  actuals: z.array(actualSchema).max(100),
  /** Marks that were moved, and what was filmed; left out means neither. */
  filming: blockFilmingSchema.optional(),
});

export const partnerSchema = z.strictObject({
  id,
  name,
  relation: z.enum(RELATIONS),
  /** The words of the disclosure as the viewer meets them. */
  disclosure: text.max(500),
});

/** A finding set aside by the coach, with the reason that travels in the file. */
export const waiverSchema = z.strictObject({
  id,
  rule: id,
  /** The rule's version at the time, so that a changed rule asks again. */
  ruleVersion: z.int().min(1),
  block: id.nullable(),
  line: id.nullable(),
  /** The words waived; other words ask again. */
  text,
  reason: text.min(1).max(500),
});

/** What the last episode of the series handed on for one exercise. */
export const carryOverSchema = z.strictObject({ exercise: id, sets: text, actuals: z.array(actualSchema).max(100), note: text });

/** A word the coach says in a way of their own: as it is written, and as it sounds in ordinary spelling. */
export const pronunciationSchema = z.strictObject({ written: name.min(1), said: name.min(1) });

export const episodeSchema = z.strictObject({
  format: z.literal(EPISODE_FORMAT),
  version: z.literal(EPISODE_VERSION),
  id,
  title: name,
  series: z.strictObject({
    name,
    number: z.int().min(1).max(10_000).nullable(),
    coach: name,
    /** Checks of level `consider` that the series leaves out; a `stop` or `fix` is never silenced this way. */
    quiet: z.array(id).max(200).default([]),
    /** Words said otherwise than they are written; left out means none. */
    pronunciations: z.array(pronunciationSchema).max(300).optional(),
  }),
  audience: z.strictObject({ level: z.enum(LEVELS), groups: z.array(z.enum(GROUPS)).max(GROUPS.length) }),
  session: z.strictObject({
    place: name,
    date: z.iso.date().nullable(),
    /** Local start on the floor, 24-hour clock. */
    time: z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, "expected a time such as 06:45").nullable(),
    slotMinutes: z.int().min(1).max(600),
    kit: z.array(name).max(60),
    units: z.enum(UNITS),
    /** Nobody there to spot. */
    alone: z.boolean(),
    cameras: z.int().min(1).max(2),
    filming: sessionFilmingSchema.optional(),
    /** Stations whose room is known, by name. */
    floors: z.array(floorSchema).max(60).optional(),
  }),
  video: z.strictObject({ targetSeconds: z.int().min(10).max(36_000), frameRate: z.enum(FRAME_RATES), aspect: z.enum(ASPECTS) }),
  publish: z.strictObject({
    date: z.iso.date(),
    time: z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, "expected a time such as 12:00"),
    /** IANA zone name, such as Europe/Dublin. */
    zone: z.string().regex(/^[A-Za-z0-9_+-]+(\/[A-Za-z0-9_+-]+)*$/).max(64),
  }).nullable(),
  partners: z.array(partnerSchema).max(20),
  blocks: z.array(blockSchema).max(MAX_BLOCKS),
  carryOver: z.array(carryOverSchema).max(200),
  waivers: z.array(waiverSchema).max(1000),
});

export type Episode = z.infer<typeof episodeSchema>;
export type Block = z.infer<typeof blockSchema>;
export type BlockKind = Block["kind"];
export type Line = z.infer<typeof lineSchema>;
export type LineKind = Line["kind"];
export type SetLine = z.infer<typeof setLineSchema>;
export type SetRole = SetLine["role"];
export type Alternate = z.infer<typeof alternateSchema>;
export type Actual = z.infer<typeof actualSchema>;
export type Partner = z.infer<typeof partnerSchema>;
export type Waiver = z.infer<typeof waiverSchema>;
export type CarryOver = z.infer<typeof carryOverSchema>;
export type FrameRate = Episode["video"]["frameRate"];
export type Units = Episode["session"]["units"];
export type BlockFilming = z.infer<typeof blockFilmingSchema>;
export type PlacedMark = z.infer<typeof placedMarkSchema>;
export type Filmed = z.infer<typeof filmedSchema>;
export type Floor = z.infer<typeof floorSchema>;
export type FloorSide = (typeof FLOOR_SIDES)[number];
export type SessionFilming = z.infer<typeof sessionFilmingSchema>;
/** Everything of an episode but its title and blocks: what the Write sheet shows as facts. */
export type Facts = Omit<Episode, "title" | "blocks">;
