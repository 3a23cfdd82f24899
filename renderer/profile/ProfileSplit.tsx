import type { ReactNode } from "react";
import { BelowSplit } from "../app/BelowSplit.tsx";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
import { ProfilePanel } from "./ProfilePanel.tsx";
import { setProfile } from "./profileHand.ts";
import { profileWords } from "./words.ts";

/** The diagram with the profile below it, and the divider between. */
export function ProfileSplit({ open, children }: { readonly open: OpenRoute; readonly children: ReactNode }) {
  const session = useSession();
  const { isOpen, sizeFrac } = useView((state) => state.profile);
  const isElsewhere = useView((state) => state.sheets !== null || state.isSettingsOpen);
  return (
    <BelowSplit
      className="profile"
      label={profileWords.room}
      dividerLabel={profileWords.divider}
      isShown={isOpen && !isElsewhere}
      sizeFrac={sizeFrac}
      size={(frac) => setProfile(session, { sizeFrac: frac })}
      panel={<ProfilePanel open={open} />}
    >
      {children}
    </BelowSplit>
  );
}
