import { useMemo } from "react";
import { useSession } from "../session/context";
import { minutes } from "../words/clock";
import { count } from "../words/count";
import { muscleSets, plannedSets } from "../../shared/training";
import { ClockTable } from "./clock-table";
import { LengthBar } from "./lengths";
import { EmptyPlace, Figure, PlaceFrame, WideTable } from "./place";
import { TrainPart } from "./train-part";
import "./train.css";

/** What the session costs on the floor, and what is lifted today against last time. */
export function Train() {
  const { episode, clocks } = useSession();
  const { gym } = clocks;
  const sets = episode.blocks.flatMap(plannedSets);
  const working = sets.filter((set) => set.role === "working").length;
  const over = gym.seconds - gym.slotSeconds;
  const overWords = over <= 0 ? null : over < 30 ? "less than 1 min over" : `${minutes(over)} min over`;
  const fit = `${minutes(gym.seconds)} of ${minutes(gym.slotSeconds)} min${overWords === null ? `, ${minutes(-over)} min free` : `, ${overWords}`}`;
  return (
    <PlaceFrame
      title="Train"
      about="Minutes on the floor, loads, and today against last time. It shows its arithmetic; what is lifted is yours and a qualified coach's to decide."
      figures={
        <>
          <Figure value={`${minutes(gym.seconds)} of ${minutes(gym.slotSeconds)} min`} label="on the floor" over={overWords} />
          <Figure value={String(working)} label={`${working === 1 ? "working set" : "working sets"}, ${count(sets.length - working, "ramp-up set")}`} />
        </>
      }
    >
      {episode.blocks.length === 0 ? (
        <EmptyPlace>No sets yet. Write a set line in an exercise, such as "3 x 8-10 @ 22 kg each hand, rest 90 s", and its minutes are counted here.</EmptyPlace>
      ) : (
        <>
          <LengthBar filled={gym.seconds} room={gym.slotSeconds} longest={0} words={fit} />
          <p className="fit-words second" aria-hidden="true">{fit}</p>
          <ClockTable />
          <h2>Block by block</h2>
          {episode.blocks.map((block, i) => <TrainPart key={block.id} block={block} number={i + 1} />)}
          <Muscles />
        </>
      )}
    </PlaceFrame>
  );
}

/** What of the week's sets this episode gives each muscle. */
function Muscles() {
  const { episode } = useSession();
  const rows = useMemo(() => muscleSets(episode), [episode]);
  if (rows.length === 0) return null;
  return (
    <section aria-label="Sets per muscle" id="sets-per-muscle">
      <h2>Sets per muscle</h2>
      <WideTable label="Working sets of this episode per muscle">
        <thead>
          <tr><th scope="col">Muscle</th><th scope="col" className="number">Direct</th><th scope="col" className="number">Indirect</th><th scope="col" className="number">Counted</th></tr>
        </thead>
        <tbody>
          {rows.map(({ muscle, direct, indirect, counted }) => (
            <tr key={muscle}><th scope="row">{muscle}</th><td className="number">{direct || ""}</td><td className="number">{indirect || ""}</td><td className="number strong">{counted}</td></tr>
          ))}
        </tbody>
      </WideTable>
      <p className="second sets-source">
        Towards the week, from this episode alone. A direct set counts one, an indirect set a half: Pelland et al., The Resistance Training Dose-Response, preprint, 2024.
      </p>
    </section>
  );
}
