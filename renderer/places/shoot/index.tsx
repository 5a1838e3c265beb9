import { useMemo } from "react";
import { blockName } from "../../../shared/episode";
import { cardInWords, cardPlan } from "../../../shared/filming";
import { shootPlan } from "../../../shared/shoot-plan";
import { useSession } from "../../session/context";
import { clock } from "../../words/clock";
import { count, listed } from "../../words/count";
import { BackFromGym } from "../back-from-gym";
import { EmptyPlace, Figure, PlaceFrame } from "../place";
import { FilmingFacts } from "./filming-facts";
import { Needs } from "./needs";
import { FloorPapers } from "./papers";
import { ShootPart } from "./shoot-part";
import "./shoot.css";

/** Which mark films which set, from where, how far and how high. */
export function Shoot() {
  const { episode } = useSession();
  const plan = useMemo(() => shootPlan(episode), [episode]);
  const card = cardPlan(episode, plan.recordedMinutes);
  const unfilmed = plan.blocks.filter(({ wants }) => wants.length === 0).map(({ block }) => block);
  return (
    <PlaceFrame
      title="Shoot"
      about="There is one take: which mark films which set, where the tripod stands, and what would stay unfilmed. Drag a mark on a plan, or move it with the arrow keys."
      figures={
        <>
          <Figure value={count(plan.moves, "move")} label={plan.moves === 0 ? "every camera stays" : plan.extraSeconds < 1 ? "all within rests" : "of the camera"} />
          <Figure value={plan.extraSeconds < 1 ? "0 min" : clock(plan.extraSeconds)} label="longer on the floor" />
          <Figure value={`${plan.recordedMinutes > 0 ? Math.max(1, Math.round(plan.recordedMinutes)) : 0} min`} label={card.batteryLasts ? "recorded, one battery holds" : "recorded, bring power"} />
          <Figure value={`${card.gigabytes.toFixed(1)} GB`} label={card.freeGigabytes === null ? "on the card" : `of ${card.freeGigabytes} GB free`} over={card.spareGigabytes !== null && card.spareGigabytes < 0 ? "too little" : null} />
          <Figure value={plan.lost.length === 0 ? "none" : String(plan.lost.length)} label={plan.lost.length === 1 ? "shot lost" : "shots lost"} />
        </>
      }
    >
      <FilmingFacts episode={episode} />
      {plan.recordedMinutes > 0 && <p className="second card-words">{cardInWords(episode, plan.recordedMinutes).join(" ")}</p>}
      {episode.blocks.length === 0 && <EmptyPlace>No shots yet. Write a line that begins with "shot:", such as "shot: side, full, set 2: the whole arm path".</EmptyPlace>}
      {unfilmed.length > 0 && (
        <p className="missing unfilmed">
          {unfilmed.length === 1 ? "One block has" : `${count(unfilmed.length, "block")} have`} no shot: {listed(unfilmed.map(blockName))}. Nothing of {unfilmed.length === 1 ? "it" : "them"} would be filmed.
        </p>
      )}
      {plan.blocks.map((shoot, i) => <ShootPart key={shoot.block.id} episode={episode} plan={plan} shoot={shoot} number={i + 1} />)}
      {episode.blocks.length > 0 && (
        <>
          <Needs episode={episode} />
          <FloorPapers />
        </>
      )}
      <BackFromGym />
    </PlaceFrame>
  );
}
