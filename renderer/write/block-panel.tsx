import { useRef, useState } from "react";
import { BLOCK_KIND_NAMES, BLOCK_KINDS, blockName, type Block, type BlockKind } from "../../shared/episode";
import { exerciseById, searchExercises } from "../../shared/exercises";
import { useActions } from "../session/context";
import { orNothing, readLength, readNumber, type Reading } from "../fields/read";
import { clock } from "../words/clock";
import { useDismiss, type Anchor } from "./use-menu";

export type BlockAction = "up" | "down" | "duplicate" | "split" | "join" | "remove";
const ACTIONS: readonly { action: BlockAction; label: string }[] = [
  { action: "up", label: "Move up" }, { action: "down", label: "Move down" }, { action: "duplicate", label: "Duplicate" },
  { action: "split", label: "Split at the caret" }, { action: "join", label: "Join with the block above" }, { action: "remove", label: "Remove block" },
];

/** A length applied as it is typed, so that the clocks move with it; what makes no sense yet stays in the field, explained. */
function LengthField({ label, hint, value, read, print, onValue }: {
  label: string; hint: string; value: number | null; read: (text: string) => Reading<number | null>; print: (value: number) => string; onValue: (value: number | null) => void;
}) {
  const [typed, setTyped] = useState(value === null ? "" : print(value));
  const reading = read(typed);
  return (
    <label>
      <span>{label}</span>
      <input type="text" value={typed} aria-invalid={!reading.ok} placeholder={hint} onChange={(event) => {
        setTyped(event.target.value);
        const now = read(event.target.value);
        if (now.ok) onValue(now.value);
      }} />
      {!reading.ok && <span className="field-problem">{reading.problem}</span>}
    </label>
  );
}

const readMinutes = orNothing(readNumber(0, 600, "minutes"));
const readClip = orNothing(readLength(0, 3600, "1:20"));

/** What a block is and how long it takes, and what can be done to it as a whole. */
export function BlockPanel({ block, anchor, onAct, onClose }: { block: Block; anchor: Anchor; onAct: (action: BlockAction) => void; onClose: () => void }) {
  const ref = useRef<HTMLDivElement>(null);
  const { apply } = useActions();
  useDismiss(ref, onClose);
  const set = (fields: Partial<Pick<Block, "kind" | "exercise" | "station" | "minutes" | "clipSeconds">>): void => apply([{ type: "set-block", block: block.id, fields }]);
  const near = searchExercises(block.title, 8);
  const chosen = block.exercise === null ? null : exerciseById(block.exercise);
  const offered = chosen && !near.includes(chosen) ? [chosen, ...near] : near;
  return (
    <div ref={ref} className="block-panel" role="dialog" aria-label={`About ${blockName(block)}`} style={{ top: anchor.top }}>
      <div className="fields">
        <label>
          <span>Part of the episode</span>
          <select autoFocus value={block.kind} onChange={(event) => set({ kind: event.target.value as BlockKind })}>
            {BLOCK_KINDS.map((kind) => <option key={kind} value={kind}>{BLOCK_KIND_NAMES[kind]}</option>)}
          </select>
        </label>
        <label>
          <span>Exercise in the catalogue</span>
          <select value={block.exercise ?? ""} onChange={(event) => set({ exercise: event.target.value || null })}>
            <option value="">none</option>
            {block.exercise !== null && !chosen && <option value={block.exercise}>{block.exercise} (not known here)</option>}
            {offered.map((exercise) => <option key={exercise.id} value={exercise.id}>{exercise.name}</option>)}
          </select>
        </label>
        <label>
          <span>Station</span>
          <input type="text" defaultValue={block.station} maxLength={200} placeholder={chosen?.station ?? ""} onChange={(event) => set({ station: event.target.value })} />
        </label>
        <LengthField label="Minutes on the floor" hint="8" value={block.minutes} read={readMinutes} print={String} onValue={(minutes) => set({ minutes })} />
        <LengthField label="Clip on screen" hint="1:20" value={block.clipSeconds} read={readClip} print={clock} onValue={(clipSeconds) => set({ clipSeconds })} />
      </div>
      <p className="second">Leave the minutes empty to have them computed from the sets, and the clip empty to take it from the words.</p>
      <div className="actions">
        {ACTIONS.map(({ action, label }) => <button key={action} type="button" className="word-button" onClick={() => onAct(action)}>{label}</button>)}
      </div>
    </div>
  );
}
