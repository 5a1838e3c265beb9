import { useId, useState, type KeyboardEvent } from "react";
import type { Reading } from "./read";
import "./fields.css";

interface Props<T> {
  readonly label: string;
  /** Shown only to screen readers, where a table or sentence already says it. */
  readonly labelHidden?: boolean;
  /** What the episode says now, as text. */
  readonly value: string;
  readonly read: (text: string) => Reading<T>;
  /** Called with a new value only, once per change: on leaving the field or with Enter. */
  readonly onCommit: (value: T) => void;
  readonly type?: "text" | "date" | "time";
  readonly rows?: number;
  readonly placeholder?: string;
  readonly help?: string;
  readonly disabled?: boolean;
  readonly className?: string;
  readonly inputMode?: "text" | "numeric" | "decimal";
}

/**
 * A field that keeps what is typed until it makes sense: a good value is applied when the field is left, so one change is one undo;
 * a bad one stays in the field, explained, and is never applied. Escape goes back to the episode's own.
 */
export function DraftField<T>({ label, labelHidden = false, value, read, onCommit, type = "text", rows, placeholder, help, disabled = false, className = "", inputMode }: Props<T>) {
  const [draft, setDraft] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const id = useId();
  const note = problem ?? help;

  const commit = (): void => {
    if (draft === null) return;
    const reading = draft === value ? null : read(draft);
    if (reading && !reading.ok) return setProblem(reading.problem);
    setDraft(null);
    setProblem(null);
    if (reading) onCommit(reading.value);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === "Enter" && rows === undefined) commit();
    else if (event.key === "Escape" && draft !== null) {
      event.stopPropagation();
      setDraft(null);
      setProblem(null);
    }
  };
  const shared = {
    id, disabled, placeholder, onKeyDown, value: draft ?? value, onBlur: commit, "aria-invalid": problem !== null, "data-draft": draft !== null,
    "aria-describedby": note === undefined ? undefined : `${id}-note`,
    onChange: (event: { target: { value: string } }) => setDraft(event.target.value),
  };
  return (
    <div className={`field ${className}`}>
      <label htmlFor={id} className={labelHidden ? "visually-hidden" : ""}>{label}</label>
      {rows === undefined ? <input type={type} inputMode={inputMode} autoComplete="off" {...shared} /> : <textarea rows={rows} {...shared} />}
      {note !== undefined && <p id={`${id}-note`} className={problem === null ? "second" : "field-problem"} role={problem === null ? undefined : "alert"}>{note}</p>}
    </div>
  );
}
