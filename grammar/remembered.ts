/**
 * The function with its answers kept for as long as what they are of lives: a line stays the same object while nobody
 * edits it, a log or a record for one version of a text.
 */
export function remembered<K extends object, V>(work: (key: K) => V): (key: K) => V {
  const answers = new WeakMap<K, { readonly value: V }>();
  return (key) => {
    let answer = answers.get(key);
    if (answer === undefined) {
      answer = { value: work(key) };
      answers.set(key, answer);
    }
    return answer.value;
  };
}
