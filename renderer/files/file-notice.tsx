import { useActions, useSession } from "../session/context";
import "./files.css";

/** One line when words and file have come apart, with what can be done about it; nothing otherwise. */
export function FileNotice() {
  const { file } = useSession();
  const actions = useActions();
  if (file.status === "failed") {
    return (
      <div className="file-notice" role="alert">
        <p><b>Not saved.</b> {file.message ?? "The file could not be written."} Your words are still here.</p>
        <button type="button" className="word-button" onClick={() => void actions.save()}>Try again</button>
        <button type="button" className="word-button" onClick={() => void actions.saveAsNew()}>Save as a new file</button>
      </div>
    );
  }
  if (file.status === "changed-outside") {
    return (
      <div className="file-notice" role="alert">
        <p><b>Changed outside.</b> {file.message ?? "Another program changed this file."} Nothing of either is lost until you choose.</p>
        <button type="button" className="word-button" onClick={() => void actions.saveAsNew()}>Save mine as a new file</button>
        <button type="button" className="word-button" onClick={() => void actions.takeTheirs()}>Take theirs</button>
      </div>
    );
  }
  return null;
}
