import { useCallback, useEffect, useId, useRef } from "react";
import type { Finding, Remedy } from "../../shared/checks";
import { useBook } from "../rule-book/context";
import { useActions, useSession } from "../session/context";
import { carryNames, type Named } from "../session/same-findings";
import { FindingItem } from "./finding-item";
import { RemedySlip } from "./remedy-slip";
import { usePreview } from "./use-preview";
import "./findings.css";

/** The findings, each under a name that stays with it from list to list, so that its place on the page does too. */
function useNamed(findings: readonly Finding[]): readonly Named<Finding>[] {
  const last = useRef<{ of: readonly Finding[]; named: readonly Named<Finding>[] }>({ of: [], named: [] });
  if (last.current.of !== findings) last.current = { of: findings, named: carryNames(last.current.named, findings) };
  return last.current.named;
}

/** Applies a remedy once: a second press before the checks have looked again would do it twice. */
function useMendOnce(hide: () => void): (remedy: Remedy) => void {
  const { mend } = useActions();
  const { findings } = useSession();
  const pressed = useRef(new Set<Remedy>());
  useEffect(() => {
    pressed.current = new Set();
  }, [findings]);
  return useCallback((remedy) => {
    hide();
    if (pressed.current.has(remedy)) return;
    pressed.current.add(remedy);
    mend(remedy.edits);
  }, [mend, hide]);
}

/** A list of open findings with their remedies. */
export function FindingList({ findings }: { findings: readonly Finding[] }) {
  const { episode } = useSession();
  const openBook = useBook();
  const frame = useRef<HTMLUListElement>(null);
  const named = useNamed(findings);
  const { shown, handlers } = usePreview();
  const slip = useId();
  const onMend = useMendOnce(handlers.hide);
  const previewed = shown && (named.find(({ name }) => name === shown.finding)?.finding.remedies.find(({ label }) => label === shown.label) ?? null);
  return (
    <>
      <ul ref={frame} className="finding-list">
        {named.map(({ finding, name }) => (
          <FindingItem
            key={name} name={name} finding={finding} preview={handlers} slip={slip}
            previewed={shown?.finding === name ? previewed : null} onMend={onMend} onAbout={openBook}
          />
        ))}
      </ul>
      {shown && previewed && <RemedySlip id={slip} remedy={previewed} button={shown.button} episode={episode} frame={frame} handlers={handlers} />}
    </>
  );
}
