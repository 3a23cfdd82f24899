/** A value made when it is first asked for, and then kept. */
export function onFirstUse<Value>(make: () => Value): () => Value {
  let kept: { readonly value: Value } | null = null;
  return () => {
    kept ??= { value: make() };
    return kept.value;
  };
}
