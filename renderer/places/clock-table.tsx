import { blockName } from "../../shared/episode";
import type { ClockPart } from "../../shared/training";
import { useActions, useSession } from "../session/context";
import { clock } from "../words/clock";
import { WideTable } from "./place";

const COLUMNS: readonly { readonly label: ClockPart["label"]; readonly head: string }[] = [
  { label: "planned", head: "Planned" }, { label: "set-up", head: "Set-up" }, { label: "ramp-up sets", head: "Ramp-up" }, { label: "sets", head: "Sets" },
  { label: "rest", head: "Rest" }, { label: "change of side", head: "Sides" }, { label: "camera moves", head: "Camera" }, { label: "change of station", head: "Station" },
];

const secondsOf = (parts: readonly ClockPart[], label: ClockPart["label"]): number => parts.reduce((sum, part) => (part.label === label ? sum + part.seconds : sum), 0);

/** Where the floor time goes, block by block; columns that nothing falls into are left out. */
export function ClockTable() {
  const { episode, clocks } = useSession();
  const { goTo } = useActions();
  const parts = new Map(clocks.gym.blocks.map((block) => [block.block, block]));
  const all = clocks.gym.blocks.flatMap((block) => block.parts);
  const columns = COLUMNS.filter(({ label }) => secondsOf(all, label) > 0);
  return (
    <WideTable label="Gym clock, minutes and seconds per block">
      <thead>
        <tr>
          <th scope="col">Block</th>
          {columns.map(({ label, head }) => <th key={label} scope="col" className="number" title={label}>{head}</th>)}
          <th scope="col" className="number">Total</th>
        </tr>
      </thead>
      <tbody>
        {episode.blocks.map((block, i) => {
          const known = parts.get(block.id);
          return (
            <tr key={block.id}>
              <th scope="row"><button type="button" className="name-button" onClick={() => goTo({ block: block.id })}><span className="soft">{i + 1}</span> {blockName(block)}</button></th>
              {columns.map(({ label }) => {
                const value = secondsOf(known?.parts ?? [], label);
                return <td key={label} className="number">{value > 0 ? clock(value) : ""}</td>;
              })}
              <td className="number strong">{clock(known?.seconds ?? 0)}</td>
            </tr>
          );
        })}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">Together</th>
          {columns.map(({ label }) => <td key={label} className="number">{clock(secondsOf(all, label))}</td>)}
          <td className="number">{clock(clocks.gym.seconds)}</td>
        </tr>
      </tfoot>
    </WideTable>
  );
}
