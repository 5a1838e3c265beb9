import { useEffect, useMemo } from "react";
import { createPlayer, playableWav, type Player } from "./player";
import type { ReadingDesk } from "./reading";

/** A player that falls silent when reading begins, before the microphone could hear it, and when the read-through closes. */
export function usePlayer(desk: ReadingDesk): Player {
  const player = useMemo(() => createPlayer(desk.sound, playableWav), [desk]);
  useEffect(() => {
    const forget = desk.state.subscribe(() => {
      if (desk.state.get().phase === "reading") player.quiet();
    });
    return () => {
      forget();
      player.quiet();
    };
  }, [desk, player]);
  return player;
}
