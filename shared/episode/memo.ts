/**
 * Remembers a pure function's answer per object, for as long as the object lives.
 *
 * Blocks are never changed in place, so an answer stays right while its block exists;
 * a block that was not edited keeps its identity and is not computed again.
 */
export function memoOn<K extends object, V>(compute: (key: K) => V): (key: K) => V {
  const known = new WeakMap<K, { value: V }>();
  return (key) => {
    const hit = known.get(key);
    if (hit) return hit.value;
    const value = compute(key);
    known.set(key, { value });
    return value;
  };
}
