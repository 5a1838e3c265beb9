import { useKept } from "../words/use-kept";

export interface Choices {
  /** Letters in CSS pixels. */
  readonly size: number;
  /** Of the measured pace, 1 is the same. */
  readonly rate: number;
  readonly isMirrored: boolean;
  readonly isLight: boolean;
  readonly waits: boolean;
  readonly set: (change: { readonly size?: number; readonly rate?: number; readonly isMirrored?: boolean; readonly isLight?: boolean; readonly waits?: boolean }) => void;
}

export const SIZES = { least: 28, most: 144, step: 6, usual: 58 } as const;
export const RATES = { least: 0.5, most: 1.6, step: 0.05 } as const;

/** A number within bounds; what cannot be read is `otherwise`. */
export function within(value: number, { least, most }: { readonly least: number; readonly most: number }, otherwise: number): number {
  return Number.isFinite(value) ? Math.max(least, Math.min(most, value)) : otherwise;
}

/** How the prompter is set; kept from one time to the next. */
export function useChoices(): Choices {
  const [size, setSize] = useKept("prompter-size", String(SIZES.usual));
  const [rate, setRate] = useKept("prompter-rate", "1");
  const [mirrored, setMirrored] = useKept("prompter-mirrored", "no");
  const [light, setLight] = useKept("prompter-light", "no");
  const [waits, setWaits] = useKept("prompter-waits", "yes");
  const word = (value: boolean): string => (value ? "yes" : "no");
  return {
    size: within(Number(size), SIZES, SIZES.usual), rate: within(Number(rate), RATES, 1),
    isMirrored: mirrored === "yes", isLight: light === "yes", waits: waits === "yes",
    set: (change) => {
      if (change.size !== undefined) setSize(String(within(change.size, SIZES, SIZES.usual)));
      if (change.rate !== undefined) setRate(within(change.rate, RATES, 1).toFixed(2));
      if (change.isMirrored !== undefined) setMirrored(word(change.isMirrored));
      if (change.isLight !== undefined) setLight(word(change.isLight));
      if (change.waits !== undefined) setWaits(word(change.waits));
    },
  };
}
