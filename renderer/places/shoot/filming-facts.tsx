import { LENS_NAMES, type Episode, type SessionFilming } from "../../../shared/episode";
import { formatOf, LENSES, RECORDING_FORMATS, USUAL_SETUP } from "../../../shared/filming";
import { Choice } from "../../fields/choice";
import { DraftField } from "../../fields/draft-field";
import { orNothing, readNumber } from "../../fields/read";
import { useActions } from "../../session/context";
import "../../facts/facts.css";

const LENS_WORDS = { "ultra-wide": "Ultra-wide", main: "Main", tele: "Tele" } as const;
const readFree = orNothing(readNumber(0, 100_000, "the free space"));
const readBattery = orNothing(readNumber(1, 10_000, "the minutes"));

/** What the session is filmed with: everything on this place is computed from it. */
export function FilmingFacts({ episode }: { episode: Episode }) {
  const { apply } = useActions();
  const { session, video } = episode;
  const filming: SessionFilming = session.filming ?? { lens: "main", stature: USUAL_SETUP.stature, format: formatOf(episode), freeGigabytes: null, batteryMinutes: null };
  const set = (fields: Partial<SessionFilming>): void => apply([{ type: "set-facts", fields: { session: { ...session, filming: { ...filming, ...fields } } } }]);
  const { lens } = filming;
  return (
    <div className="filming-facts facts-grid" role="group" aria-label="What you film with">
      <Choice label="Cameras" value={session.cameras === 2 ? "2" : "1"} options={[{ value: "1", label: "One" }, { value: "2", label: "Two" }]} onChoose={(cameras) => apply([{ type: "set-facts", fields: { session: { ...session, cameras: Number(cameras) } } }])} />
      <Choice
        label="Lens" value={typeof lens === "number" ? "other" : lens} options={[...LENS_NAMES.map((value) => ({ value, label: `${LENS_WORDS[value]}, ${LENSES[value]} mm` })), { value: "other" as const, label: "Another" }]}
        onChoose={(chosen) => set({ lens: chosen === "other" ? (typeof lens === "number" ? lens : 35) : chosen })}
      />
      {typeof lens === "number" && <DraftField label="Focal length, mm (35 mm-equivalent)" inputMode="decimal" value={String(lens)} read={readNumber(5, 1200, "the focal length")} onCommit={(value) => set({ lens: value })} />}
      <Choice label="Picture" value={video.aspect} options={[{ value: "16:9", label: "16:9, sideways" }, { value: "9:16", label: "9:16, upright" }, { value: "both", label: "Both, cut from one" }]} onChoose={(aspect) => apply([{ type: "set-facts", fields: { video: { ...video, aspect } } }])} />
      <DraftField label="Your height, m" inputMode="decimal" value={String(filming.stature)} read={readNumber(1, 2.5, "your height")} onCommit={(stature) => set({ stature })} />
      <Choice label="Format" value={formatOf(episode)} options={Object.keys(RECORDING_FORMATS).map((value) => ({ value, label: value }))} onChoose={(format) => set({ format })} />
      <DraftField label="Free on the phone, GB" inputMode="decimal" placeholder="not looked" value={filming.freeGigabytes === null ? "" : String(filming.freeGigabytes)} read={readFree} onCommit={(freeGigabytes) => set({ freeGigabytes })} />
      <DraftField label="Battery lasts, min" inputMode="decimal" placeholder="90, usual" value={filming.batteryMinutes === null ? "" : String(filming.batteryMinutes)} read={readBattery} onCommit={(batteryMinutes) => set({ batteryMinutes })} />
    </div>
  );
}
