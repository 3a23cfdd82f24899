import type { ReactNode } from "react";
import { BelowSplit } from "../app/BelowSplit.tsx";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
import { CloseoutPanel } from "./CloseoutPanel.tsx";
import { setCloseout } from "./closeoutHand.ts";
import { closeoutWords } from "./words.ts";

/** The diagram with the closeout below it, and the divider between. */
export function CloseoutSplit({ open, children }: { readonly open: OpenRoute; readonly children: ReactNode }) {
  const session = useSession();
  const isOpen = useView((state) => state.closeout.isOpen);
  const sizeFrac = useView((state) => state.closeout.sizeFrac);
  const isElsewhere = useView((state) => state.sheets !== null || state.isSettingsOpen);
  return (
    <BelowSplit
      className="closeout"
      label={closeoutWords.room}
      dividerLabel={closeoutWords.divider}
      isShown={isOpen && !isElsewhere}
      sizeFrac={sizeFrac}
      size={(frac) => setCloseout(session, { sizeFrac: frac })}
      panel={<CloseoutPanel open={open} />}
    >
      {children}
    </BelowSplit>
  );
}
