import { useMemo } from "react";
import { remedyIn, wantName, type ShootBlock, type ShootPlan } from "../../../shared/shoot-plan";
import { useActions } from "../../session/context";

/** What no set films, why, and what would mend it at the least cost. */
export function Lost({ plan, shoot }: { plan: ShootPlan; shoot: ShootBlock }) {
  const { mend, newId } = useActions();
  const remedy = useMemo(() => remedyIn(plan, shoot, newId), [plan, shoot, newId]);
  if (shoot.lost.length === 0) return null;
  return (
    <div className="lost">
      <ul>
        {shoot.lost.map(({ want: id, why }) => {
          const want = shoot.wants.find((each) => each.id === id);
          return want ? <li key={id}><b>Lost{want.need === "nice" ? ", nice to have" : ""}:</b> {wantName(want)} <span className="second">{why}</span></li> : null;
        })}
      </ul>
      {remedy && (
        <p className="second">
          {remedy.sentence}{" "}
          {remedy.edits.length > 0 && <button type="button" className="word-button" onClick={() => mend(remedy.edits)}>{remedy.label}</button>}
        </p>
      )}
    </div>
  );
}
