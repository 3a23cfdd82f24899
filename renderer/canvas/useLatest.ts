import { type RefObject, useLayoutEffect, useRef } from "react";

/** A value as it was last shown, for listeners that outlive a drawing. */
export function useLatest<T>(value: T): RefObject<T> {
  const latest = useRef(value);
  useLayoutEffect(() => {
    latest.current = value;
  }, [value]);
  return latest;
}
