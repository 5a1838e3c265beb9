import { useEffect } from "react";
import { useKept } from "./words/use-kept";

const THEMES = [["", "as the system"], ["light", "light"], ["dark", "dark"]] as const;
const TEXTS = [["", "usual"], ["large", "large"], ["largest", "largest"]] as const;

/** Light or dark, and the size of text. */
export function ViewChoices() {
  const [theme, setTheme] = useKept("theme");
  const [text, setText] = useKept("text");
  useEffect(() => {
    const { dataset } = document.documentElement;
    if (theme) dataset["theme"] = theme;
    else delete dataset["theme"];
    if (text) dataset["text"] = text;
    else delete dataset["text"];
  }, [theme, text]);
  return (
    <details
      className="view-choices"
      onKeyDown={(event) => {
        if (event.key !== "Escape" || !event.currentTarget.open) return;
        event.currentTarget.open = false;
        event.currentTarget.querySelector("summary")?.focus();
      }}
      onBlur={(event) => {
        if (!event.currentTarget.contains(event.relatedTarget)) event.currentTarget.open = false;
      }}
    >
      <summary>View</summary>
      <div>
        <label>Light or dark <select value={theme} onChange={(event) => setTheme(event.target.value)}>{THEMES.map(([value, name]) => <option key={value} value={value}>{name}</option>)}</select></label>
        <label>Text <select value={text} onChange={(event) => setText(event.target.value)}>{TEXTS.map(([value, name]) => <option key={value} value={value}>{name}</option>)}</select></label>
      </div>
    </details>
  );
}
