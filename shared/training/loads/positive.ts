/**
 * The number itself.
 * @param what - "A load", for the sentence
 * @throws {RangeError} when it is not finite and above 0
 */
export function positive(value: number, what: string): number {
  if (!(value > 0) || !Number.isFinite(value)) throw new RangeError(`${what} is a number above 0, not ${value}`);
  return value;
}
