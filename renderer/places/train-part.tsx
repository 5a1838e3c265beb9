import { memo } from "react";
import type { Block } from "../../shared/episode";
import { exerciseById } from "../../shared/exercises";
import { plannedSets, rampOf, type PlannedSet } from "../../shared/training";
import { DraftField } from "../fields/draft-field";
import { orNothing, readName, readNumber } from "../fields/read";
import { useActions, useSession } from "../session/context";
import { minutes, seconds } from "../words/clock";
import { actualsInWords, againstLastTime, rampInWords } from "./loads";
import { BlockPart } from "./place";

const readMinutes = orNothing(readNumber(0, 600, "the minutes"));
const readStation = readName(200);

/** One block on the floor: its minutes and station, its sets in order, and last time's. */
export const TrainPart = memo(function TrainPart({ block, number }: { block: Block; number: number }) {
  const { clocks } = useSession();
  const { apply } = useActions();
  const known = clocks.gym.blocks.find((one) => one.block === block.id);
  const sets = plannedSets(block);
  const exercise = block.exercise === null ? undefined : exerciseById(block.exercise);
  return (
    <BlockPart
      block={block} number={number}
      aside={
        <div className="train-fields">
          <DraftField
            className="station-field" label="Station" value={block.station} placeholder={exercise?.station ?? ""} read={readStation}
            onCommit={(station) => apply([{ type: "set-block", block: block.id, fields: { station } }])}
          />
          <DraftField
            className="minutes-field" label="Minutes" inputMode="decimal" value={block.minutes === null ? "" : String(block.minutes)} placeholder={minutes(known?.seconds ?? 0)} read={readMinutes}
            onCommit={(planned) => apply([{ type: "set-block", block: block.id, fields: { minutes: planned } }])}
          />
        </div>
      }
    >
      {sets.length > 0 && <Sets sets={sets} />}
      {known?.unread.map((text) => <p key={text} className="missing">"{text}" cannot be read as a set line and counts nothing.</p>)}
      <LastTime block={block} />
      <RampUp block={block} />
    </BlockPart>
  );
});

const setName = ({ role, number }: PlannedSet): string => `${role === "working" ? "Set" : "Ramp-up"} ${number}`;

function Sets({ sets }: { sets: readonly PlannedSet[] }) {
  return (
    <table className="sets">
      <thead>
        <tr><th scope="col">Set</th><th scope="col">Work</th><th scope="col">Load</th><th scope="col" className="number">Takes</th><th scope="col" className="number">Then rest</th></tr>
      </thead>
      <tbody>
        {sets.map((set) => (
          <tr key={`${set.role} ${set.number}`} className={set.role}>
            <th scope="row">{setName(set)}</th>
            <td>{set.work}</td>
            <td>{set.load}</td>
            <td className="number">{seconds(set.workSeconds)} s</td>
            <td className="number">{set.restSeconds > 0 ? `${seconds(set.restSeconds)} s` : ""}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function LastTime({ block }: { block: Block }) {
  const { episode } = useSession();
  const last = block.exercise === null ? undefined : episode.carryOver.find((one) => one.exercise === block.exercise);
  if (!last) return null;
  const compared = againstLastTime(block, last);
  const done = actualsInWords(last, episode.session.units);
  return (
    <p>
      <b>Last time</b> {last.sets}{done && `. Done: ${done}`}. {compared !== null && <span className="compared">{compared}</span>} {last.note && <span className="soft">{last.note}</span>}
    </p>
  );
}

function RampUp({ block }: { block: Block }) {
  const actions = useActions();
  const ramp = rampOf(block);
  if (!ramp) return null;
  const planned = block.sets.some((set) => set.role === "ramp-up");
  return (
    <p>
      <b>A usual ramp</b> {rampInWords(ramp)} <span className="soft">Common practice, a starting point to edit.</span>{" "}
      {!planned && (
        <button
          type="button" className="word-button"
          onClick={() => actions.apply(ramp.lines.map((text, at) => ({ type: "insert-set", block: block.id, at, set: { id: actions.newId(), role: "ramp-up", text } })))}
        >
          Add these as ramp-up sets
        </button>
      )}
    </p>
  );
}
