import { useEffect, useMemo, useRef, useState } from "react";
import { actionable, openFindings, RULES } from "../../shared/checks";
import { useActions, useSession } from "../session/context";
import { FindingItem } from "./finding-item";
import { groupFindings, listKeys, newStops } from "./group";
import { useKeptFocus } from "./use-kept-focus";
import "./findings.css";

/** What the checks found, grouped by the moment it matters. */
export function Findings() {
  const { findings, episode } = useSession();
  const [isAll, setAll] = useState(false);
  const { shown, held } = useMemo(() => {
    const open = openFindings(findings);
    const { shown: few } = actionable(open);
    return { shown: isAll ? open : few, held: open.length - few.length };
  }, [findings, isAll]);
  const groups = useMemo(() => groupFindings(shown), [shown]);
  const panel = useRef<HTMLDivElement>(null);
  useKeptFocus(panel, findings);
  return (
    <div className="findings" ref={panel} tabIndex={-1}>
      {groups.open === 0 && (
        <p className="findings-none">
          {episode.blocks.length === 0
            ? "Nothing to check yet. Findings come here as you write, each with its reason and, where there is one, a remedy."
            : "Nothing found. The checks cannot see you lift: watch your own takes before you publish."}
        </p>
      )}
      {groups.moments.map(({ heading, findings: list }) => {
        const keys = listKeys(list);
        return (
          <section key={heading} className="moment" aria-label={heading}>
            <h2><span>{heading}</span> <span>{list.length}</span></h2>
            <ul>
              {list.map((finding, i) => <FindingItem key={keys[i]} finding={finding} />)}
            </ul>
          </section>
        );
      })}
      {held > 0 && (
        <button type="button" className="word-button findings-more" aria-expanded={isAll} onClick={() => setAll(!isAll)}>
          {isAll ? "Show the gravest of each block" : `Show ${held} more of lesser weight`}
        </button>
      )}
      <Waived />
      <LeftOut />
      <StopAlert />
    </div>
  );
}

/** Those set aside, each with its reason and a way back. */
function Waived() {
  const { findings } = useSession();
  const actions = useActions();
  const waived = useMemo(() => groupFindings(findings).waived, [findings]);
  if (waived.length === 0) return null;
  const keys = listKeys(waived);
  return (
    <details className="waived">
      <summary>Set aside <span>{waived.length}</span></summary>
      <ul>
        {waived.map((finding, i) => (
          <li key={keys[i]} className="finding">
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
            <button type="button" className="word-button" onClick={() => actions.apply([{ type: "set-facts", fields: { series: { ...episode.series, quiet: quiet.filter((each) => each !== id) } } }])}>Check it again</button>
          </li>
        ))}
      </ul>
    </details>
  );
}

/** Tells a screen reader of a new stop, and of nothing else: other findings come and go with the words. */
function StopAlert() {
  const { findings, episode } = useSession();
  const known = useRef<{ episode: string; keys: ReadonlySet<string> } | null>(null);
  const [said, setSaid] = useState("");
  useEffect(() => {
    const keys = new Set(findings.filter((finding) => finding.level === "stop").map((finding) => finding.key));
    // Opening an episode is not news: only what turns up while it is open is told.
    const news = known.current?.episode === episode.id ? newStops(known.current.keys, findings) : [];
    known.current = { episode: episode.id, keys };
    if (news.length > 0) setSaid(`Stop. ${news.join(" ")}`);
  }, [findings, episode.id]);
  return <p className="visually-hidden" aria-live="polite">{said}</p>;
}
