import { useEffect, useState } from "react";
import type { Answer } from "../../shared/bridge";
import { useActions, useApi, useSession } from "../session/context";
import { count } from "../words/count";
import { savedAt } from "./saved-at";

type State = Answer<"episode:history">[number];

/** What the open file said before; any of it can be brought back, and undone again. */
export function OlderStates({ onRestored }: { onRestored: () => void }) {
  const { file } = useSession();
  const api = useApi();
  const actions = useActions();
  const [states, setStates] = useState<readonly State[]>([]);
  const [problem, setProblem] = useState<string | null>(null);
  const { name, savedAt: lastSave } = file;

  useEffect(() => {
    if (name === null) return setStates([]);
    let wanted = true;
    api["episode:history"]({ file: name }).then(
      (found) => wanted && setStates(found),
      (error: unknown) => wanted && setProblem(`Older states could not be listed: ${error instanceof Error ? error.message : String(error)}`),
    );
    return () => {
      wanted = false;
    };
  }, [api, name, lastSave]);

  const restore = async (state: string): Promise<void> => {
    if (name === null) return;
    try {
      const answer = await api["episode:older"]({ file: name, state });
      if (!answer.ok) return setProblem(answer.message);
      actions.restore(answer.episode);
      onRestored();
    } catch (error) {
      setProblem(`That state could not be read: ${error instanceof Error ? error.message : String(error)}`);
    }
  };

  if (states.length === 0 && problem === null) return null;
  return (
    <section aria-label="Older states of this episode">
      <h3>Older states of this episode</h3>
      {problem !== null && <p className="field-problem" role="alert">{problem}</p>}
      <ul className="files-list">
        {states.map(({ state, savedAt: at, blocks }) => (
          <li key={state} className="files-state">
            <span>{savedAt(at)} <span className="second">{count(blocks, "block")}</span></span>
            <button type="button" className="word-button" aria-label={`Bring back the state of ${savedAt(at)}`} onClick={() => void restore(state)}>Bring back</button>
          </li>
        ))}
      </ul>
    </section>
  );
}
