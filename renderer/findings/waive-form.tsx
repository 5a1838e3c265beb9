import { useEffect, useId, useRef, useState, type FormEvent } from "react";
import type { CheckLevel } from "../../shared/checks";

/** Longest reason the file keeps, in characters. */
const MAX_REASON = 500;

interface Props {
  readonly level: CheckLevel;
  readonly onWaive: (reason: string) => void;
  /** Leaves the whole check out of the series; offered for a `consider` only. */
  readonly onLeaveOut: () => void;
  readonly onClose: () => void;
}

/** Asks for the reason without which nothing is set aside. */
export function WaiveForm({ level, onWaive, onLeaveOut, onClose }: Props) {
  const [reason, setReason] = useState("");
  const [asked, setAsked] = useState(false);
  const field = useRef<HTMLTextAreaElement>(null);
  const id = useId();
  useEffect(() => field.current?.focus(), []);
  const missing = asked && reason.trim() === "";
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    setAsked(true);
    if (reason.trim() === "") field.current?.focus();
    else onWaive(reason.trim());
  };
  return (
    <form className="waive-form" noValidate onSubmit={submit} onKeyDown={(event) => event.key === "Escape" && onClose()}>
      <label htmlFor={id}>Your reason</label>
      <textarea
        id={id} ref={field} rows={2} maxLength={MAX_REASON} value={reason} aria-required="true" aria-invalid={missing} aria-describedby={`${id}-help`}
        onChange={(event) => setReason(event.target.value.replace(/\s+/g, " "))}
        onKeyDown={(event) => {
          if (event.key === "Enter") submit(event);
        }}
      />
      <p id={`${id}-help`} className={missing ? "field-problem" : "second"}>
        {missing ? "Write a reason first; without one the finding stays." : level === "stop"
          ? "Somebody could get hurt here, or the law is broken. The reason travels in the file, for whoever opens it next. Other words ask again."
          : "The reason is kept in the file. Other words ask again."}
      </p>
      <div className="finding-more">
        <button type="submit" className="plain-button">Set aside</button>
        <button type="button" className="word-button quiet" onClick={onClose}>Keep it</button>
        {level === "consider" && <button type="button" className="word-button quiet" onClick={onLeaveOut}>Leave this check out of the series</button>}
      </div>
    </form>
  );
}
