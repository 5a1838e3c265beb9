import { memo, useSyncExternalStore } from "react";
import type { Take } from "../../shared/bridge";
import { takesOf, type LineToRead } from "./lines";
import type { Player } from "./player";
import type { ReadingDesk } from "./reading";
import { usePlayer } from "./use-player";

/** "+0.8 s", "−1.2 s", "as planned": measured against planned. */
export function difference(measured: number, planned: number): string {
  const by = Math.round((measured - planned) * 10) / 10;
  if (Math.abs(by) < 0.05) return "as planned";
  return `${by > 0 ? "+" : "−"}${Math.abs(by).toFixed(1)} s`;
}

/** A take in a few words: its number, its length, and what to know about it. */
function takeWords(take: Take, number: number, text: string): string {
  const length = take.seconds === null ? (take.recorded === null ? "broken off" : `broken off after ${take.recorded.toFixed(1)} s`) : `${take.seconds.toFixed(1)} s`;
  return `take ${number}, ${length}${take.file === null ? ", tapped" : ""}${take.text === text ? "" : ", other words"}`;
}

/** Every line with its planned and measured seconds and all its takes. */
export function TakesTable({ desk, lines, onRetake }: { desk: ReadingDesk; lines: readonly LineToRead[]; onRetake: (index: number) => void }) {
  const { takes, folder, at, phase } = useSyncExternalStore(desk.state.subscribe, desk.state.get);
  const player = usePlayer(desk);
  const playing = useSyncExternalStore(player.playing.subscribe, player.playing.get);
  const hasSound = takes.some(({ file }) => file !== null);
  return (
    <section className="takes" aria-label="Lines and takes">
      <div className="wide-table" role="region" aria-label="Lines, seconds and takes" tabIndex={0}>
        <table>
          <thead><tr><th scope="col">Line</th><th scope="col" className="number">Planned</th><th scope="col" className="number">Read</th><th scope="col" className="number">Differs by</th><th scope="col">Takes</th></tr></thead>
          <tbody>
            {lines.map((line, i) => (
              <TakesRow
                key={line.line} line={line} heading={lines[i - 1]?.block === line.block ? null : line.block} isHere={phase === "reading" && i === at} number={i + 1}
                takes={takes} playing={playing} player={player} isReading={phase === "reading"} desk={desk} index={i} onRetake={onRetake}
              />
            ))}
          </tbody>
        </table>
      </div>
      {hasSound && folder !== null && <p className="second">The recordings are plain WAV files in {folder}. No take is ever removed or replaced.</p>}
    </section>
  );
}

interface RowProps {
  readonly line: LineToRead;
  readonly heading: string | null;
  readonly number: number;
  readonly index: number;
  readonly isHere: boolean;
  readonly takes: readonly Take[];
  readonly playing: string | null;
  readonly player: Player;
  readonly isReading: boolean;
  readonly desk: ReadingDesk;
  readonly onRetake: (index: number) => void;
}

const TakesRow = memo(function TakesRow({ line, heading, number, index, isHere, takes, playing, player, isReading, desk, onRetake }: RowProps) {
  const { all, chosen, counts } = takesOf(takes, line);
  return (
    <>
      {heading !== null && <tr className="takes-block"><th colSpan={5} scope="rowgroup">{heading}</th></tr>}
      <tr className={isHere ? "here" : undefined} aria-current={isHere ? "true" : undefined}>
        <th scope="row"><span className="takes-words"><span className="soft">{number}</span><span>{line.text}</span></span></th>
        <td className="number">{line.planned.toFixed(1)} s</td>
        <td className="number strong">{counts?.seconds !== undefined && counts.seconds !== null ? `${counts.seconds.toFixed(1)} s` : ""}</td>
        <td className="number">{counts?.seconds !== undefined && counts.seconds !== null ? difference(counts.seconds, line.planned) : ""}</td>
        <td>
          {all.length === 1 && chosen && <span className="second">{takeWords(chosen, 1, line.text)} </span>}
          {all.length > 1 && (
            <select aria-label={`The take of line ${number} that counts`} value={chosen?.id ?? ""} onChange={(event) => void desk.choose(event.target.value)}>
              {all.map((take, i) => <option key={take.id} value={take.id}>{takeWords(take, i + 1, line.text)}</option>)}
            </select>
          )}
          <span className="takes-doings">
            {chosen !== null && chosen.file !== null && (playing === chosen.id
              ? <button type="button" className="word-button" onClick={player.quiet}>Stop listening</button>
              : <button type="button" className="word-button" aria-label={`Listen to line ${number}`} disabled={isReading} onClick={() => void player.listen(chosen.id)}>Listen</button>)}
            <button type="button" className="word-button" aria-label={`Read line ${number} ${all.length > 0 ? "again" : "alone"}`} onClick={() => onRetake(index)}>{all.length > 0 ? "Read again" : "Read alone"}</button>
          </span>
        </td>
      </tr>
    </>
  );
});
