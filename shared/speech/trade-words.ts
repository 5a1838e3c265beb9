/**
 * Syllables of trade words, and of everyday words the general counter gets wrong.
 * Singular; the plain plural and the possessive follow. As said in a gym: "glutes" 1.
 */
export const TRADE_WORDS: Readonly<Record<string, number>> = {
  kettlebell: 3, deadlift: 2, glute: 1, isometric: 4, eccentric: 3, concentric: 3,
  w: 3,
};
