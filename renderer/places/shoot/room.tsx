import { useState } from "react";
import { FLOOR_SIDES, type Episode, type Floor } from "../../../shared/episode";
import { isSameStation } from "../../../shared/exercises";
import { SIDE_WORDS, type BlockFloor } from "../../../shared/filming";
import { Choice, Tick } from "../../fields/choice";
import { DraftField } from "../../fields/draft-field";
import { orNothing, readNumber } from "../../fields/read";
import { useActions } from "../../session/context";
import "../../facts/facts.css";

const readMetres = orNothing(readNumber(0.1, 100, "the metres"));

/** What is round a station: walls, mirrors, where people walk past. Kept for the station, so every block there knows it. */
export function Room({ session, floor: { station, room, smallestRoom } }: { session: Episode["session"]; floor: BlockFloor }) {
  const { apply } = useActions();
  const [isOpen, setOpen] = useState(false);
  if (station === "") return <p className="second">Name the station of this block to write down what is round it.</p>;
  const known: Floor = room ?? { station, walls: { ahead: null, behind: null, left: null, right: null }, mirrors: [], aisle: null };
  const set = (fields: Partial<Floor>): void => {
    const others = (session.floors ?? []).filter((each) => !isSameStation(each.station, station));
    apply([{ type: "set-facts", fields: { session: { ...session, floors: [...others, { ...known, ...fields }] } } }]);
  };
  const needs = FLOOR_SIDES.map((side) => `${smallestRoom[side].toFixed(1)} m ${SIDE_WORDS[side]}`).join(", ");
  return (
    <details className="room" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>The room round the {station}{room ? "" : ", not measured"}</summary>
      {isOpen && (
        <>
          <p className="second">From the middle of the person; leave a side open where no wall is near. All marks need {needs}.</p>
          <div className="facts-grid">
            {FLOOR_SIDES.map((side) => (
              <DraftField
                key={side} label={`Wall ${SIDE_WORDS[side]}, m`} inputMode="decimal" placeholder="open" value={known.walls[side] === null ? "" : String(known.walls[side])} read={readMetres}
                onCommit={(metres) => set({ walls: { ...known.walls, [side]: metres } })}
              />
            ))}
            <Choice
              label="People walk past" value={known.aisle ?? "none"} options={[{ value: "none", label: "nowhere near" }, ...FLOOR_SIDES.map((value) => ({ value, label: SIDE_WORDS[value] }))]}
              onChoose={(aisle) => set({ aisle: FLOOR_SIDES.find((side) => side === aisle) ?? null })}
            />
            <div className="facts-ticks" role="group" aria-label="Mirrors">
              {FLOOR_SIDES.map((side) => <Tick key={side} label={`Mirror ${SIDE_WORDS[side]}`} checked={known.mirrors.includes(side)} onChange={(on) => set({ mirrors: FLOOR_SIDES.filter((one) => (one === side ? on : known.mirrors.includes(one))) })} />)}
            </div>
          </div>
        </>
      )}
    </details>
  );
}
