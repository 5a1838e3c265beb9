import { useEffect, useId, useLayoutEffect, useRef, useState, type KeyboardEvent } from "react";
import { oneLine, tooLong } from "./edits";

interface Props {
  readonly label: string;
  readonly text: string;
  /** Where the caret goes, a character offset; a new object brings it there again. */
  readonly place: { readonly caret: number };
  readonly onText: (text: string) => void;
  readonly onSplit: (text: string, at: number) => void;
  /** Gives a sentence where the lines cannot be joined. */
  readonly onJoin: (text: string) => string | null;
  /** To the say line before (-1) or after (1); the caret stands at the text's edge. */
  readonly onMove: (step: 1 | -1) => void;
  readonly onLeave: () => void;
}

const GROWS_BY_ITSELF = CSS.supports("field-sizing", "content");

const isSame = (a: string, b: string): boolean => a.trim() === b.trim();

/**
 * The words of one line to type in. Every letter goes to the episode at once, so the rulers follow; the app's undo takes it back.
 * Enter cuts the line at the caret, Backspace at its start joins it to the one before, Escape leaves.
 */
export function LineEditor({ label, text, place, onText, onSplit, onJoin, onMove, onLeave }: Props) {
  const field = useRef<HTMLTextAreaElement>(null);
  // The episode may hold the words a little differently (spaces at the end); what is typed stays as typed.
  const [draft, setDraft] = useState(text);
  const sent = useRef(text);
  const [problem, setProblem] = useState<string | null>(null);
  const problemId = useId();
  /** Where the caret was before the last letter or paste. */
  const selected = useRef({ start: 0, end: 0 });
  useEffect(() => {
    if (isSame(text, sent.current)) return;
    sent.current = text;
    setDraft(text);
    setProblem(null);
  }, [text]);
  useLayoutEffect(() => {
    const node = field.current;
    if (!node) return;
    node.focus();
    node.setSelectionRange(place.caret, place.caret);
    // The browser tells of it a moment later; a paste may come before.
    selected.current = { start: place.caret, end: place.caret };
  }, [place]);
  // As high as its words, where the styles cannot do it by themselves.
  useLayoutEffect(() => {
    const node = field.current;
    if (!node || GROWS_BY_ITSELF) return;
    node.style.height = "0";
    node.style.height = `${node.scrollHeight + 2}px`;
  }, [draft]);

  const onKeyDown = (event: KeyboardEvent<HTMLTextAreaElement>): void => {
    if (event.nativeEvent.isComposing) return;
    const { selectionStart: at, selectionEnd } = event.currentTarget;
    const isCaret = at === selectionEnd;
    if (event.key === "Escape") {
      event.preventDefault();
      event.stopPropagation();
      onLeave();
    } else if (event.key === "Enter") {
      event.preventDefault();
      if (isCaret) onSplit(draft, at);
    } else if (event.key === "Backspace" && isCaret && at === 0) {
      event.preventDefault();
      setProblem(onJoin(draft));
    } else if (isCaret && ((event.key === "ArrowUp" && at === 0) || (event.key === "ArrowDown" && at === draft.length))) {
      event.preventDefault();
      onMove(event.key === "ArrowUp" ? -1 : 1);
    }
  };
  // A form of its own: browsers look through all fields of the same form at every letter, and the page has hundreds outside of any.
  return (
    <form autoComplete="off" onSubmit={(event) => event.preventDefault()}>
      <textarea
        ref={field} className="line-editor" aria-label={label} rows={1} value={draft} spellCheck={false} onKeyDown={onKeyDown} aria-invalid={problem !== null} aria-describedby={problem === null ? undefined : problemId}
        onSelect={({ currentTarget }) => {
          selected.current = { start: currentTarget.selectionStart, end: currentTarget.selectionEnd };
        }}
        onChange={({ currentTarget }) => {
          const typed = oneLine(currentTarget.value);
          const tooMuch = tooLong(typed);
          setProblem(tooMuch);
          if (tooMuch !== null) {
            // The words go back to what they were after this; so does the caret, which would land at their end.
            const { start, end } = selected.current;
            queueMicrotask(() => currentTarget.setSelectionRange(start, end));
            return;
          }
          setDraft(typed);
          sent.current = typed;
          onText(typed);
        }}
      />
      {problem !== null && <p id={problemId} className="field-problem" role="alert">{problem}</p>}
    </form>
  );
}
