import type { Episode } from "../../shared/episode";
import { DraftField } from "../fields/draft-field";
import { orNothing, readDay, readTime, readZone } from "../fields/read";
import { useActions, useSession } from "../session/context";

const readDayOrNone = orNothing(readDay);
type Publish = NonNullable<Episode["publish"]>;

/** When the episode goes out. Without a day there is neither time nor zone. */
export function PublishFacts() {
  const { episode } = useSession();
  const actions = useActions();
  const { publish } = episode;
  const set = (fields: Partial<Publish>): void => {
    const known: Publish = publish ?? { date: "", time: "12:00", zone: Intl.DateTimeFormat().resolvedOptions().timeZone };
    actions.apply([{ type: "set-facts", fields: { publish: { ...known, ...fields } } }]);
  };
  return (
    <fieldset>
      <legend>Going out</legend>
      <div className="facts-grid">
        <DraftField
          label="Day" type="date" value={publish?.date ?? ""} read={readDayOrNone}
          onCommit={(date) => (date === null ? actions.apply([{ type: "set-facts", fields: { publish: null } }]) : set({ date }))}
        />
        <DraftField label="Time" type="time" disabled={publish === null} value={publish?.time ?? ""} read={readTime} onCommit={(time) => set({ time })} />
        <DraftField label="Time zone" disabled={publish === null} value={publish?.zone ?? ""} read={readZone} onCommit={(zone) => set({ zone })} {...(publish === null ? { help: "Comes with the day." } : {})} />
      </div>
    </fieldset>
  );
}
