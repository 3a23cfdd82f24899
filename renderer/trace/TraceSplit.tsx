import type { ReactNode } from "react";
import { BelowSplit } from "../app/BelowSplit.tsx";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
import { TracePanel } from "./TracePanel.tsx";
import { setTraces } from "./traceHand.ts";
import { traceWords } from "./words.ts";

/** The diagram with the traces below it, and the divider between. */
export function TraceSplit({ open, children }: { readonly open: OpenRoute; readonly children: ReactNode }) {
  const session = useSession();
  const isOpen = useView((state) => state.traces.isOpen);
  const sizeFrac = useView((state) => state.traces.sizeFrac);
  const isElsewhere = useView((state) => state.sheets !== null || state.isSettingsOpen);
  return (
    <BelowSplit
      className="traces"
      label={traceWords.room}
      dividerLabel={traceWords.divider}
      isShown={isOpen && !isElsewhere}
      sizeFrac={sizeFrac}
      size={(frac) => setTraces(session, { sizeFrac: frac })}
      panel={<TracePanel open={open} />}
    >
      {children}
    </BelowSplit>
  );
}
