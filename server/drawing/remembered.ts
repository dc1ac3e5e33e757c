/** The function with its answers kept for as long as what they are of: a layer is asked for several times in a drawing. */
export function remembered<K extends object, V>(make: (key: K) => V): (key: K) => V {
  const known = new WeakMap<K, V>();
  return (key) => {
    const before = known.get(key);
    if (before !== undefined) return before;
    const made = make(key);
    known.set(key, made);
    return made;
  };
}
