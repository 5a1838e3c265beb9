import { useEffect, useId, useMemo, useRef, useState } from "react";
import { RULES } from "../../shared/checks";
import { Dialog } from "../dialog/dialog";
import { useSession } from "../session/context";
import { count } from "../words/count";
import { ruleBook } from "./book";
import { RuleEntry } from "./rule-entry";
import "./rule-book.css";

interface Props {
  readonly open: boolean;
  /** The rule to open it at; null for its beginning. */
  readonly about: string | null;
  readonly onClose: () => void;
}

/** What Repwright checks: every rule by subject, made from what the rules say of themselves. */
export function RuleBook({ open, about, onClose }: Props) {
  return (
    <Dialog open={open} title="What Repwright checks" kind="rule-book" onClose={onClose}>
      <Pages about={about} />
    </Dialog>
  );
}

function Pages({ about }: { about: string | null }) {
  const { quiet } = useSession().episode.series;
  const [typed, setTyped] = useState("");
  const [isAll, setAll] = useState(false);
  /** Opened or closed by hand, whatever else is the case. */
  const [byHand, setByHand] = useState<ReadonlyMap<string, boolean>>(() => new Map(about === null ? [] : [[about, true]]));
  const pages = useRef<HTMLDivElement>(null);
  const field = useId();
  const chapters = useMemo(() => ruleBook(RULES, typed, quiet), [typed, quiet]);
  const found = chapters.reduce((sum, { entries }) => sum + entries.length, 0);
  const isSearch = typed.trim() !== "";

  // The dialog is put on the page after its contents: only then can they take the focus.
  useEffect(() => {
    const frame = requestAnimationFrame(() => {
      const entry = about === null ? null : pages.current?.querySelector<HTMLElement>(`[data-rule="${CSS.escape(about)}"]`);
      entry?.scrollIntoView({ block: "start" });
      (entry?.querySelector<HTMLElement>("button") ?? document.getElementById(field))?.focus({ preventScroll: true });
    });
    return () => cancelAnimationFrame(frame);
  }, [about, field]);

  return (
    <>
      <p className="book-about">
        <span className="level stop">stop</span> somebody could get hurt, or the law is broken. <span className="level fix">fix</span> the episode will not work.{" "}
        <span className="level consider">consider</span> craft: such a check can be left out of a series.
      </p>
      <div className="book-tools">
        <label htmlFor={field}>Find</label>
        <input id={field} type="text" value={typed} placeholder="warm-up, rest, disclosure" onChange={(event) => setTyped(event.target.value)} />
        <span className="second" role="status">{!isSearch ? count(RULES.length, "check") : found === 0 ? "no check says that" : `${found} of ${count(RULES.length, "check")}`}</span>
        <button type="button" className="word-button" aria-pressed={isAll} onClick={() => {
          setByHand(new Map());
          setAll(!isAll);
        }}>{isAll ? "Hide the reasons" : "Show every reason"}</button>
      </div>
      <nav className="book-subjects" aria-label="Subjects">
        {chapters.map(({ subject, name, entries }) => (
          <button key={subject} type="button" className="word-button quiet" onClick={() => {
            const chapter = pages.current?.querySelector<HTMLElement>(`[data-subject="${subject}"]`);
            chapter?.scrollIntoView({ block: "start" });
            chapter?.querySelector<HTMLElement>("button")?.focus({ preventScroll: true });
          }}>{name} {entries.length}</button>
        ))}
      </nav>
      <div className="book-pages" ref={pages}>
        {chapters.map(({ subject, name, entries }) => (
          <section key={subject} data-subject={subject} aria-labelledby={`${field}-${subject}`}>
            <h3 id={`${field}-${subject}`}>{name}</h3>
            <ul>
              {entries.map((entry) => {
                const { id } = entry.meta;
                const isOpen = byHand.get(id) ?? (isAll || (isSearch && entry.isMatchInside));
                return <RuleEntry key={id} entry={entry} isOpen={isOpen} isAsked={id === about} onToggle={() => setByHand(new Map(byHand).set(id, !isOpen))} />;
              })}
            </ul>
          </section>
        ))}
        {found === 0 && <p className="soft book-none">Try one word of it, such as the exercise, the rest or the shot it is about.</p>}
      </div>
    </>
  );
}
