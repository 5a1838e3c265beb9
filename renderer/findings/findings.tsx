import { useEffect, useMemo, useRef, useState } from "react";
import { actionable, openFindings, RULES, type Finding } from "../../shared/checks";
import { useBook } from "../rule-book/context";
import { useActions, useSession } from "../session/context";
import { countsInWords, placeOf } from "../words/open-counts";
import { PLACE_NAMES } from "../words/place-names";
import { FindingList } from "./finding-list";
import { groupFindings, newStops } from "./group";
import { useKeptFocus } from "./use-kept-focus";
import "./findings.css";

/** So many findings are seen at a glance, and no choice among them is offered. */
const FEW = 6;

/** What the checks found, grouped by the moment it matters. */
export function Findings() {
  const { findings: found, episode, place } = useSession();
  const openBook = useBook();
  const [isAll, setAll] = useState(false);
  // Write shows all of them, always: there the list must not jump under somebody typing.
  const [isChosen, setChosen] = useState(false);
  const isOfPlace = isChosen && place !== "write";
  const findings = useMemo(() => (isOfPlace ? found.filter((finding) => placeOf(finding) === place) : found), [found, isOfPlace, place]);
  const ofPlace = useMemo(() => openFindings(found).filter((finding) => placeOf(finding) === place).length, [found, place]);
  const open = openFindings(found).length;
  const { shown, held } = useMemo(() => {
    const standing = openFindings(findings);
    const { shown: few } = actionable(standing);
    return { shown: isAll ? standing : few, held: standing.length - few.length };
  }, [findings, isAll]);
  const groups = useMemo(() => groupFindings(findings, new Set(shown)), [findings, shown]);
  const panel = useRef<HTMLDivElement>(null);
  useKeptFocus(panel, findings);
  return (
    <div className="findings" ref={panel} tabIndex={-1}>
      {place !== "write" && (isOfPlace || (open > FEW && ofPlace > 0 && ofPlace < open)) && (
        <button type="button" className="word-button quiet findings-choice" onClick={() => setChosen(!isOfPlace)}>
          {isOfPlace ? `Show all ${open}, of every place` : `Show only the ${ofPlace} that ${ofPlace === 1 ? "concerns" : "concern"} ${PLACE_NAMES[place]}`}
        </button>
      )}
      {isOfPlace && open > 0 && ofPlace === 0 && <p className="findings-none">Nothing open concerns {PLACE_NAMES[place]}.</p>}
      {open === 0 && (
        <p className="findings-none">
          {episode.blocks.length === 0
            ? "Nothing to check yet. Findings come here as you write, each with its reason and, where there is one, a remedy."
            : "Nothing found. The checks cannot see you lift: watch your own takes before you publish."}
        </p>
      )}
      {groups.moments.map(({ heading, counts, findings: list }) => (
        <section key={heading} className="moment" aria-label={heading}>
          <h2><span>{heading}</span> <span className="moment-counts">{countsInWords(counts)}</span></h2>
          <FindingList findings={list} />
        </section>
      ))}
      {held > 0 && (
        <button type="button" className="word-button findings-more" aria-expanded={isAll} onClick={() => setAll(!isAll)}>
          {isAll ? "Show the gravest of each block" : `Show ${held} more of lesser weight`}
        </button>
      )}
      <Waived />
      <LeftOut />
      <button type="button" className="word-button quiet findings-book" onClick={() => openBook(null)}>What Repwright checks</button>
      <StopAlert />
    </div>
  );
}

/** Those set aside, each with its reason and a way back. */
function Waived() {
  const { findings } = useSession();
  const actions = useActions();
  const waived = useMemo(() => findings.filter((finding) => finding.waiver !== null), [findings]);
  if (waived.length === 0) return null;
  return (
    <details className="waived">
      <summary>Set aside <span>{waived.length}</span></summary>
      <ul>
        {waived.map((finding) => (
          <li key={finding.key} className="finding">
            <p><span className={`level ${finding.level}`}>{finding.level}</span> {finding.message}</p>
            <p className="second">Because: {finding.waiver?.reason}</p>
            <button type="button" className="word-button" onClick={() => actions.unwaive(finding)}>Bring back</button>
          </li>
        ))}
      </ul>
    </details>
  );
}

/** Checks the series leaves out, each with a way back. */
function LeftOut() {
  const { episode } = useSession();
  const actions = useActions();
  const { quiet } = episode.series;
  if (quiet.length === 0) return null;
  return (
    <details className="waived">
      <summary>Left out of the series <span>{quiet.length}</span></summary>
      <ul>
        {quiet.map((id) => (
          <li key={id} className="finding">
            <p>{RULES.find(({ meta }) => meta.id === id)?.meta.summary ?? id}</p>
            <button type="button" className="word-button" onClick={() => actions.checkAgain(id)}>Check it again</button>
          </li>
        ))}
      </ul>
    </details>
  );
}

/** Tells a screen reader of a new stop, and of nothing else: other findings come and go with the words. */
function StopAlert() {
  const { findings, episode } = useSession();
  const known = useRef<{ episode: string; findings: readonly Finding[] } | null>(null);
  const [said, setSaid] = useState("");
  useEffect(() => {
    // Opening an episode is not news: only what turns up while it is open is told.
    const news = known.current?.episode === episode.id ? newStops(known.current.findings, findings) : [];
    known.current = { episode: episode.id, findings };
    // The same stop may come again; the words have to go in between for it to be told again.
    if (news.length > 0 || !findings.some(({ level }) => level === "stop")) setSaid(news.length > 0 ? `Stop. ${news.join(" ")}` : "");
  }, [findings, episode.id]);
  return <p className="visually-hidden" aria-live="polite">{said}</p>;
}
