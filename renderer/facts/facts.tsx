import { useEffect, useId, useRef } from "react";
import { ASPECTS, FRAME_RATES, GROUPS, LEVELS, UNITS, type Episode, type Facts as FactFields } from "../../shared/episode";
import { Choice, Tick } from "../fields/choice";
import { DraftField } from "../fields/draft-field";
import { orNothing, readDay, readLength, readName, readTime, readWhole } from "../fields/read";
import { useActions, useSession } from "../session/context";
import { clock } from "../words/clock";
import { GROUP_NAMES } from "./facts-sentence";
import { Partners } from "./partners";
import { PublishFacts } from "./publish-facts";
import "./facts.css";

const LEVEL_NAMES: Readonly<Record<Episode["audience"]["level"], string>> = { beginner: "Beginners", intermediate: "Intermediate", advanced: "Advanced", mixed: "Every level" };
const ASPECT_NAMES: Readonly<Record<Episode["video"]["aspect"], string>> = { "16:9": "16:9, sideways", "9:16": "9:16, upright", both: "Both, cut from one" };
const MAX_KIT = 60;
const readEpisodeNumber = orNothing(readWhole(1, 10_000, "the number"));
const readDayOrNone = orNothing(readDay);
const readTimeOrNone = orNothing(readTime);

/** One thing a line. */
function readKit(text: string) {
  const kit = text.split("\n").map((line) => line.trim()).filter(Boolean);
  if (kit.length > MAX_KIT) return { ok: false, problem: `At most ${MAX_KIT} things; these are ${kit.length}.` } as const;
  const long = kit.find((line) => line.length > 200);
  return long === undefined ? ({ ok: true, value: kit } as const) : ({ ok: false, problem: `"${long.slice(0, 24)}..." is longer than 200 characters.` } as const);
}

/** Who, where, when and for whom: everything the sheet says in one sentence under the title. */
export function Facts({ onClose }: { onClose?: () => void }) {
  const { episode } = useSession();
  const actions = useActions();
  const root = useRef<HTMLElement>(null);
  const heading = useId();
  const { series, audience, session, video } = episode;
  const set = (fields: Partial<FactFields>): void => actions.apply([{ type: "set-facts", fields }]);
  const setSeries = (fields: Partial<typeof series>): void => set({ series: { ...series, ...fields } });
  const setSession = (fields: Partial<typeof session>): void => set({ session: { ...session, ...fields } });
  const setVideo = (fields: Partial<typeof video>): void => set({ video: { ...video, ...fields } });
  useEffect(() => root.current?.querySelector<HTMLElement>("input")?.focus(), []);

  return (
    <section className="facts-form" ref={root} aria-labelledby={heading} onKeyDown={(event) => event.key === "Escape" && onClose?.()}>
      <h2 id={heading} className="visually-hidden">Facts about this episode</h2>
      <fieldset>
        <legend>Series</legend>
        <div className="facts-grid">
          <DraftField className="wide" label="Name" value={series.name} read={readName(200)} onCommit={(name) => setSeries({ name })} />
          <DraftField label="Episode number" inputMode="numeric" value={series.number === null ? "" : String(series.number)} read={readEpisodeNumber} onCommit={(number) => setSeries({ number })} />
          <DraftField label="Coach" value={series.coach} read={readName(200)} onCommit={(coach) => setSeries({ coach })} />
        </div>
      </fieldset>
      <fieldset>
        <legend>For whom</legend>
        <div className="facts-grid">
          <Choice label="Level" value={audience.level} options={LEVELS.map((value) => ({ value, label: LEVEL_NAMES[value] }))} onChoose={(level) => set({ audience: { ...audience, level } })} />
          <div className="facts-ticks" role="group" aria-label="Also for">
            {GROUPS.map((group) => (
              <Tick
                key={group} label={GROUP_NAMES[group]} checked={audience.groups.includes(group)}
                onChange={(on) => set({ audience: { ...audience, groups: GROUPS.filter((one) => (one === group ? on : audience.groups.includes(one))) } })}
              />
            ))}
          </div>
        </div>
      </fieldset>
      <fieldset>
        <legend>On the floor</legend>
        <div className="facts-grid">
          <DraftField className="wide" label="Place" value={session.place} read={readName(200)} onCommit={(place) => setSession({ place })} />
          <DraftField label="Day" type="date" value={session.date ?? ""} read={readDayOrNone} onCommit={(date) => setSession({ date })} />
          <DraftField label="Start" type="time" value={session.time ?? ""} read={readTimeOrNone} onCommit={(time) => setSession({ time })} />
          <DraftField label="Slot, minutes" inputMode="numeric" value={String(session.slotMinutes)} read={readWhole(1, 600, "the slot")} onCommit={(slotMinutes) => setSession({ slotMinutes })} />
          <Choice label="Loads in" value={session.units} options={UNITS.map((value) => ({ value, label: value === "kg" ? "Kilograms" : "Pounds" }))} onChoose={(units) => setSession({ units })} />
          <Choice label="Cameras" value={session.cameras === 2 ? "2" : "1"} options={[{ value: "1", label: "One" }, { value: "2", label: "Two" }]} onChoose={(cameras) => setSession({ cameras: Number(cameras) })} />
          <Tick label="Alone, nobody there to spot" checked={session.alone} onChange={(alone) => setSession({ alone })} />
          <DraftField className="whole" label="Kit, one thing a line" rows={Math.min(8, Math.max(3, session.kit.length + 1))} value={session.kit.join("\n")} read={readKit} onCommit={(kit) => setSession({ kit })} />
        </div>
      </fieldset>
      <fieldset>
        <legend>The video</legend>
        <div className="facts-grid">
          <DraftField label="Target length" value={clock(video.targetSeconds)} read={readLength(10, 36_000, "10:00")} onCommit={(length) => setVideo({ targetSeconds: Math.round(length) })} />
          <Choice label="Frames a second" value={video.frameRate} options={FRAME_RATES.map((value) => ({ value, label: value }))} onChoose={(frameRate) => setVideo({ frameRate })} />
          <Choice label="Picture" value={video.aspect} options={ASPECTS.map((value) => ({ value, label: ASPECT_NAMES[value] }))} onChoose={(aspect) => setVideo({ aspect })} />
        </div>
      </fieldset>
      <PublishFacts />
      <Partners />
      {onClose && <button type="button" className="plain-button" onClick={onClose}>Done</button>}
    </section>
  );
}
