import { useRef, useState } from "react";
import { Facts, factsSentence } from "../facts";
import { useActions, useSession } from "../session/context";

/**
 * The episode's title and, in one sentence, its facts; the sentence opens the form that changes them.
 * @param onDown - Enter or Down in the title: the first block is next
 */
export function SheetHead({ onDown }: { onDown: () => void }) {
  const { episode } = useSession();
  const { apply } = useActions();
  const [isOpen, setOpen] = useState(false);
  const sentence = useRef<HTMLButtonElement>(null);
  const close = (): void => {
    setOpen(false);
    sentence.current?.focus();
  };
  return (
    <header className="sheet-head">
      <h1 className="visually-hidden">{episode.title || "Untitled episode"}</h1>
      <input
        className="title" type="text" autoFocus aria-label="Title of the episode" placeholder="Title of the episode" maxLength={200} value={episode.title}
        onChange={(event) => apply([{ type: "set-title", title: event.target.value }])}
        onKeyDown={(event) => {
          if ((event.key !== "Enter" && event.key !== "ArrowDown") || event.nativeEvent.isComposing) return;
          event.preventDefault();
          onDown();
        }}
      />
      <button type="button" ref={sentence} className="facts-sentence" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>{factsSentence(episode)}</button>
      {isOpen && <Facts onClose={close} />}
    </header>
  );
}
