import type { Pronunciation } from "../../../shared/speech";
import { useActions, useSession } from "../../session/context";
import { withPronunciation } from "./pronunciation-list";

const NONE: readonly Pronunciation[] = [];

/** The series' own pronunciations, and how one is changed; null says a word as usual again. */
export function usePronunciations(): { own: readonly Pronunciation[]; keep: (written: string, said: string | null) => void } {
  const { series } = useSession().episode;
  const { mend } = useActions();
  const own = series.pronunciations ?? NONE;
  return { own, keep: (written, said) => mend([{ type: "set-facts", fields: { series: { ...series, pronunciations: withPronunciation(own, written, said) } } }]) };
}
