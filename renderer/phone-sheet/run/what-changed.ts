import type { Finder, Run } from "./state";
import type { Press } from "./presses";

const setOf = (run: Run, shot: string): string | null => run.plan.shots.find(({ want }) => want === shot)?.set ?? null;

/** "Rear, medium: shoulder blades together" */
export function shotWords(find: Finder, id: string): string {
  const { short, subject } = find.shot(id);
  return `${short}: ${subject}`;
}

/** What a press has done to the rest of the session, in sentences; what is lost comes first. */
export function whatChanged(find: Finder, before: Run, after: Run, press: Press): string[] {
  const said: string[] = [];
  if (press.type === "station-taken") {
    const block = find.block(press.block);
    if (press.then === "later") said.push(laterWords(find, after, block.id));
    else if (press.then === "dropped") said.push(block.sets.some(({ id }) => before.over.get(id) || before.running?.set === id) ? `${block.name} ends here today.` : `${block.name} is left out today.`);
    else said.push(`${block.name} is done another way: ${block.alternates[press.then] ?? ""}. Look at each frame before the set: the marks may stand differently.`);
  }
  if (press.type === "angle-lost") {
    const mark = find.block(press.block).marks.find(({ key }) => key === press.mark);
    said.push(`Mark ${mark?.letter ?? ""} of ${find.block(press.block).name} is lost: nothing more is filmed from there.`);
  }
  const wasLost = new Set(before.plan.lost);
  const isLost = new Set(after.plan.lost);
  const newly = after.plan.lost.filter((id) => !wasLost.has(id));
  const again = before.plan.lost.filter((id) => !isLost.has(id) && setOf(after, id) !== null);
  for (const id of newly) said.push(`Lost now: ${shotWords(find, id)} (${find.blockOfShot(id).name}${find.shot(id).need === "nice" ? ", nice to have" : ""}).`);
  for (const id of again) said.push(`Can be filmed again: ${shotWords(find, id)}, on ${inBlock(find, setOf(after, id) ?? "")}.`);
  for (const { want, set } of after.plan.shots) {
    const then = setOf(before, want) ?? filmedBefore(before, want);
    if (then !== null && then !== set && !wasLost.has(want)) said.push(`${shotWords(find, want)}: now on ${inBlock(find, set)} instead of ${find.set(then).name.toLowerCase()}.`);
  }
  if (said.length > 0 && newly.length === 0 && (press.type === "angle-lost" || press.type === "station-taken")) said.push("No shot is lost by it.");
  return said;
}

/** The set that was to have filmed a shot, over by now. */
const filmedBefore = (run: Run, shot: string): string | null => [...run.films].find(([, { shots }]) => shots.includes(shot))?.[0] ?? null;

const inBlock = (find: Finder, set: string): string => `${find.set(set).name.toLowerCase()} of ${find.blockOf(set).name}`;

/** Where a block that was put off has gone. */
function laterWords(find: Finder, run: Run, block: string): string {
  const before = run.order[run.order.indexOf(block) - 1];
  return `${find.block(block).name} comes later${before === undefined ? "" : `, after ${find.block(before).name}`}.`;
}
