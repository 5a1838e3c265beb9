import { useCallback, useEffect, useState } from "react";
import type { Answer } from "../../shared/bridge";
import { Dialog } from "../dialog/dialog";
import { useActions, useApi, useSession } from "../session/context";
import { OlderStates } from "./older-states";
import { savedAt } from "./saved-at";
import "./files.css";

type Entry = Answer<"library:list">[number];

/** The episodes of the library, and older states of the open one. */
export function Files({ open, onClose, onImport }: { open: boolean; onClose: () => void; onImport: () => void }) {
  const actions = useActions();
  const { episode } = useSession();
  const leave = (act: () => void) => (): void => {
    act();
    onClose();
  };
  return (
    <Dialog open={open} title="Episodes" onClose={onClose}>
      <div className="files-new">
        <button type="button" className="plain-button" onClick={leave(actions.newEpisode)}>New, empty</button>
        {episode.series.name.trim() !== "" && <button type="button" className="plain-button" onClick={leave(actions.nextEpisode)}>Next of {episode.series.name}</button>}
        <button type="button" className="plain-button" onClick={leave(actions.openDemo)}>New, from the demo</button>
        <button type="button" className="plain-button" onClick={leave(onImport)}>Start from old footage or notes</button>
      </div>
      <Library onOpened={onClose} />
      <OlderStates onRestored={onClose} />
    </Dialog>
  );
}

function Library({ onOpened }: { onOpened: () => void }) {
  const api = useApi();
  const actions = useActions();
  const { file } = useSession();
  const [entries, setEntries] = useState<readonly Entry[] | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const [opening, setOpening] = useState<string | null>(null);

  const list = useCallback(() => {
    api["library:list"]({}).then(
      (found) => setEntries(found),
      (error: unknown) => setProblem(`The library could not be read: ${error instanceof Error ? error.message : String(error)}`),
    );
  }, [api]);
  useEffect(() => {
    list();
    return api.on("library:changed", list);
  }, [api, list]);

  const openFile = async (name: string): Promise<void> => {
    setOpening(name);
    const refused = await actions.openFile(name);
    setOpening(null);
    if (refused === null) onOpened();
    else setProblem(refused);
  };

  return (
    <>
      {problem !== null && <p className="field-problem" role="alert">{problem}</p>}
      {entries === null && problem === null && <p className="soft">Reading the library.</p>}
      {entries?.length === 0 && <p className="soft">No episodes saved yet.</p>}
      <ul className="files-list">
        {entries?.map((entry) => (
          <li key={entry.file}>
            {entry.problem === null ? (
              <button type="button" className="files-entry" disabled={opening !== null} aria-current={entry.file === file.name ? "true" : undefined} onClick={() => void openFile(entry.file)}>
                <span className="files-title">{entry.title?.trim() || "Untitled episode"}{entry.file === file.name && <span className="second"> open now</span>}</span>
                <span className="second">{entry.series}</span>
                <span className="second files-when">{savedAt(entry.savedAt)}</span>
              </button>
            ) : (
              <div className="files-entry damaged">
                <span className="files-title">{entry.file}</span>
                <span className="field-problem">Cannot be opened. {entry.problem}</span>
                <span className="second files-when">{savedAt(entry.savedAt)}</span>
              </div>
            )}
          </li>
        ))}
      </ul>
    </>
  );
}
