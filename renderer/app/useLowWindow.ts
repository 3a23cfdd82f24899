import { useSyncExternalStore } from "react";

/** Below this height a panel below the diagram and the findings leave each other too little. */
const low = "(height < 720px)";

/** Whether the window is too low for everything below the diagram at once. */
export function useLowWindow(): boolean {
  return useSyncExternalStore(subscribe, () => matchMedia(low).matches);
}

function subscribe(hear: () => void): () => void {
  const query = matchMedia(low);
  query.addEventListener("change", hear);
  return () => query.removeEventListener("change", hear);
}
