import { LINE_KINDS, type LineKind } from "../../episode";

/** What a label in front of a row makes of it. */
export type Labelled = LineKind | "sets" | "ramp-up" | "if taken";

const LABELS: Readonly<Record<string, Labelled>> = {
  ...Object.fromEntries(LINE_KINDS.map((kind) => [kind, kind])),
  cues: "cue", do: "cue", dos: "cue", "coaching points": "cue", points: "cue", "key points": "cue", form: "cue",
  "don't": "avoid", dont: "avoid", donts: "avoid", "don'ts": "avoid", mistake: "avoid", mistakes: "avoid", "common mistakes": "avoid", fault: "avoid", faults: "avoid",
  cautions: "caution", safety: "caution", careful: "caution", warning: "caution",
  vo: "say", voiceover: "say", script: "say", film: "shot", camera: "shot", cam: "shot", shots: "shot", angle: "shot", angles: "shot",
  reminder: "note", reminders: "note", notes: "note", todo: "note",
  set: "sets", sets: "sets", scheme: "sets", work: "sets", "working sets": "sets", "work sets": "sets",
  ramp: "ramp-up", "ramp up": "ramp-up", "ramp-up": "ramp-up", "ramp ups": "ramp-up", "ramp-ups": "ramp-up", "ramp up sets": "ramp-up", "ramp-up sets": "ramp-up", "warm-up sets": "ramp-up", "warm up sets": "ramp-up", "warmup sets": "ramp-up", "build up": "ramp-up",
  "if taken": "if taken", alternative: "if taken", alternate: "if taken", alt: "if taken", swap: "if taken", "if busy": "if taken", regression: "if taken",
};

export interface LabelRead {
  readonly kind: Labelled;
  /** As it is written. */
  readonly label: string;
  /** Empty where it stands alone, for the rows below. */
  readonly behind: string;
}

/** The label a row begins with, a colon or a dash behind it; null when it begins with none. */
export function labelOf(text: string): LabelRead | null {
  const [, label = "", behind = ""] = /^([a-z][a-z' -]{0,16}?)\s*(?::|\s[–—-]\s)\s*(.*)$/i.exec(text) ?? [];
  const kind = LABELS[label.toLowerCase().replace(/’/g, "'")];
  return kind === undefined ? null : { kind, label, behind };
}

/** Light sets without a label's sign: "ramp up 20/40/60", "warm up sets 5@20". */
export function rampOf(text: string): { readonly label: string; readonly behind: string } | null {
  const [, label, behind] = /^((?:ramp(?:ing)?(?:[ -]?ups?)?|warm[ -]?up|build(?:ing)?[ -]?up|feeders?|w\/u|wu)(?: sets?)?)\b[\s:–—-]*(\S.*)$/i.exec(text) ?? [];
  return label === undefined || behind === undefined || !/\d/.test(behind) ? null : { label, behind };
}
