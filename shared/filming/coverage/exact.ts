/**
 * Seconds and weights may be fractions, and sums of fractions must not be compared as they come: 0.1 + 0.2 is not 0.3.
 * Everything that is compared is therefore a whole number.
 */
const MICROS = 1_000_000;

/** Seconds as whole microseconds; finer fractions are rounded. */
export const toMicros = (seconds: number): number => Math.round(seconds * MICROS);

export const fromMicros = (micros: number): number => micros / MICROS;

/** The digits a number is written with, and the power of ten they are divided by: 0.25 is 25 and 2. */
function decimal(value: number): { readonly digits: bigint; readonly places: number } {
  const [mantissa = "0", exponent = "0"] = String(value).split("e");
  const [whole = "0", fraction = ""] = mantissa.split(".");
  const places = fraction.length - Number(exponent);
  const digits = BigInt(whole + fraction);
  return places < 0 ? { digits: digits * 10n ** BigInt(-places), places: 0 } : { digits, places };
}

/** Weights as whole numbers of one common scale, exactly as they are written: 0.1, 0.25 and 3 become 10, 25 and 300. */
export function wholeWeights(weights: readonly number[]): bigint[] {
  const written = weights.map(decimal);
  const most = written.reduce((max, { places }) => Math.max(max, places), 0);
  return written.map(({ digits, places }) => digits * 10n ** BigInt(most - places));
}
