/** Numbers from 0 to 1, the same ones every time (a linear congruential generator, constants of Numerical Recipes). */
export function chances(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}
