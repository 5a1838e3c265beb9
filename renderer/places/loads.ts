import type { Block, CarryOver } from "../../shared/episode";
import { printLoad, weightChange, type Ramp } from "../../shared/training";
import { listed } from "../words/count";

/** Today's load against last time's, in one or two sentences; null when they cannot be compared. */
export function againstLastTime(block: Block, last: CarryOver): string | null {
  const compared = weightChange(block, last);
  if (!compared) return null;
  const { now, before, change, percent, beyondRecommended } = compared;
  if (change === 0) return `${printLoad(now)} again.`;
  const sentence = `${printLoad(now)} today, ${before.value} last time: ${Math.abs(change)} ${now.unit} ${change > 0 ? "more" : "less"}, ${Math.round(Math.abs(percent))} %.`;
  return beyondRecommended ? `${sentence} Common recommendation is 2 to 10 % at a time (ACSM, 2009).` : sentence;
}

/** What was really lifted last time: "20 kg x 10, 10, 10", loads apart where they changed. */
export function actualsInWords(last: CarryOver, unit: string): string {
  const groups: { load: number | null; reps: string[] }[] = [];
  for (const { load, reps } of last.actuals) {
    const group = groups.at(-1);
    const words = reps === null ? "?" : String(reps);
    if (group && group.load === load) group.reps.push(words);
    else groups.push({ load, reps: [words] });
  }
  return listed(groups.map(({ load, reps }) => `${load === null ? "" : `${load} ${unit} x `}${reps.join(", ")}`));
}

/** A ramp with the arithmetic to check it by: "8 kg x 5 (36 %), 14 kg x 3 (64 %), then 22 kg each hand. In steps of 2 kg." */
export function rampInWords({ weight, step, sets }: Ramp): string {
  const up = sets.map(({ load, reps, percent }) => `${load} ${weight.unit} x ${reps} (${Math.round(percent)} %)`);
  return `${up.join(", ")}, then ${printLoad(weight)}. In steps of ${step} ${weight.unit}.`;
}
