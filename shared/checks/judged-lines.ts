import { memoOn, type Block, type Facts, type Line } from "../episode";
import { exerciseOf } from "./blocks";
import { readCue, type CueAudience, type CueLabel, type CueSlot } from "./language";
import type { Moment } from "./types";

/** The lines that viewers see or hear, and how the language reader calls them. */
const SLOTS: Partial<Record<Line["kind"], CueSlot>> = { cue: "cue", say: "voiceover", caution: "safety" };

/** The family a block is read in. */
function familyOf(block: Block): string {
  if (block.kind === "warm-up") return "mobility-warmup";
  if (block.kind === "cool-down") return "cooldown-stretch";
  return exerciseOf(block)?.family ?? "general";
}

function audiencesOf(facts: Facts): CueAudience[] {
  const groups = facts.audience.groups.flatMap((group): CueAudience[] =>
    group === "pregnant" || group === "postnatal" ? ["pregnant"] : group === "older" ? ["older"] : group === "teen" ? ["teen"] : []);
  if (groups.length > 0) return [...new Set(groups)];
  return [facts.audience.level === "beginner" ? "beginner" : "general"];
}

/** Lines are read once per place they stand in; a line that did not change is not read again. */
const readings = memoOn((_line: Line) => new Map<string, readonly CueLabel[]>());

/** What one reader finds for any of the people addressed, each label once. */
function labelsOf(line: Line, slot: CueSlot, block: Block, facts: Facts, by: CueLabel["by"]): readonly CueLabel[] {
  const family = familyOf(block);
  const exercise = exerciseOf(block)?.name ?? (block.title.trim() || null);
  const known = readings(line);
  const read = audiencesOf(facts).flatMap((audience) => {
    const key = `${family} ${audience} ${exercise ?? ""}`;
    const labels = known.get(key) ?? readCue({ text: line.text, family, slot, audience, exercise });
    known.set(key, labels);
    return labels;
  });
  // By reader first: what likeness hears for one group must not hide what is plainly said to another.
  const found = read.filter((label) => label.by === by);
  return found.filter((label, i) => found.findIndex((each) => each.label === label.label) === i);
}

export interface JudgedLine {
  readonly line: Line;
  readonly label: CueLabel;
  /** What is shown must be right when the camera runs; what is only said can still be mended at the microphone. */
  readonly moment: Moment;
}

/** What one of the two readers says of a block's lines, for the people the episode is for. */
export function judged(block: Block, facts: Facts, by: CueLabel["by"]): JudgedLine[] {
  return block.lines.flatMap((line) => {
    const slot = SLOTS[line.kind];
    if (!slot) return [];
    // A declared partner has a rule of its own, which knows the name and the words to say.
    const isDeclared = facts.partners.some(({ name }) => name.trim() !== "" && line.text.toLowerCase().includes(name.trim().toLowerCase()));
    const moment = line.kind === "say" ? "before speaking" : "before filming";
    return labelsOf(line, slot, block, facts, by).filter((found) => !(found.label === "disclosure-missing" && isDeclared)).map((label) => ({ line, label, moment }));
  });
}
