import { useId } from "react";
import { useActions } from "../session/context";
import { sourceLine, type Entry } from "./book";

interface Props {
  readonly entry: Entry;
  readonly isOpen: boolean;
  /** A finding led here. */
  readonly isAsked: boolean;
  readonly onToggle: () => void;
}

/** One rule: level, what it asks for, and when; its reason and source on demand. */
export function RuleEntry({ entry: { meta, isLeftOut, sought }, isOpen, isAsked, onToggle }: Props) {
  const { leaveOut, checkAgain } = useActions();
  const body = useId();
  return (
    <li className="entry" data-rule={meta.id} data-asked={isAsked}>
      <button type="button" className="entry-head" aria-expanded={isOpen} aria-controls={body} onClick={onToggle}>
        <span><span className={`level ${meta.level}`}>{meta.level}</span></span>
        <span className="entry-summary">{meta.summary}{isLeftOut && <em> Left out of this series.</em>}</span>
        <span className="second">{meta.moment}</span>
      </button>
      <div id={body} className="entry-body" hidden={!isOpen}>
        <p>{meta.why}</p>
        {sought.length > 0 && (
          <>
            <p className="second">{sought.length} things are looked for, each by what the words do:</p>
            <dl className="entry-sought">
              {sought.map(({ name, does }) => <div key={name}><dt>{name}</dt><dd>{does}</dd></div>)}
            </dl>
          </>
        )}
        <p className="second">Source: {sourceLine(meta.source)}</p>
        {isLeftOut
          ? <button type="button" className="word-button" onClick={() => checkAgain(meta.id)}>Check it again in this series</button>
          : meta.level === "consider" && <button type="button" className="word-button quiet" onClick={() => leaveOut(meta.id)}>Leave this check out of the series</button>}
      </div>
    </li>
  );
}
