import type { SessionReport } from "../../../shared/session-report";
import { angleKey, type Finder, type Run } from "./state";

/** What goes back to the desk: sets that were done, shots with an answer or lost for good, stations that were taken. */
export function reportOf(find: Finder, run: Run): SessionReport {
  const { session } = find;
  // What could still be filmed is not lost yet; what nobody has answered for is not known.
  const isGone = (block: string, shot: string, mark: string): boolean =>
    run.plan.lost.includes(shot) && (run.finishedAt !== null || run.answers.get(shot)?.got === false || run.lostAngles.has(angleKey(block, mark)) || run.taken.get(block) === "dropped");
  return {
    format: "repwright-session", version: 1, episode: session.episode, title: session.title.slice(0, 400), plan: session.plan, units: session.units,
    sets: session.blocks.flatMap((block) => block.sets.flatMap((set): SessionReport["sets"] => {
      const span = run.over.get(set.id);
      const lifted = run.lifted.get(set.id) ?? null;
      if (!span && lifted === null) return [];
      return [{ block: block.id, set: set.place, role: set.role, number: set.number, seconds: span ? Math.min(86_400, Math.round((span.to - span.from) / 1000)) : null, lifted }];
    })),
    shots: session.blocks.flatMap((block) => block.shots.flatMap((shot): SessionReport["shots"] => {
      const answer = run.answers.get(shot.id);
      if (answer?.got) return [{ block: block.id, shot: shot.line, set: answer.set === null ? null : find.set(answer.set).place, got: true }];
      return isGone(block.id, shot.id, shot.mark) ? [{ block: block.id, shot: shot.line, set: null, got: false }] : [];
    })),
    blocks: [...run.taken].map(([block, then]) =>
      typeof then === "number" ? { block, what: "alternate" as const, words: (find.block(block).alternates[then] ?? "").slice(0, 400) } : { block, what: then, words: "" }),
    extras: session.extras.filter(({ what }) => run.extras.has(what) || run.finishedAt !== null).map(({ what }) => ({ what, got: run.extras.has(what) })),
  };
}
