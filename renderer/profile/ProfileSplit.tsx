import { type KeyboardEvent, type PointerEvent, type ReactNode, useRef } from "react";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
import { ProfilePanel } from "./ProfilePanel.tsx";
import { setProfile } from "./profileHand.ts";
import { profileWords } from "./words.ts";

const [leastFrac, mostFrac, stepFrac] = [0.2, 0.85, 0.04];

/** The diagram with the profile below it, and the divider between. */
export function ProfileSplit({ open, children }: { readonly open: OpenRoute; readonly children: ReactNode }) {
  const session = useSession();
  const isOpen = useView((state) => state.profile.isOpen);
  const sizeFrac = useView((state) => state.profile.sizeFrac);
  const isElsewhere = useView((state) => state.sheets !== null || state.isSettingsOpen);
  const area = useRef<HTMLDivElement>(null);
  const size = (frac: number): void => setProfile(session, { sizeFrac: Math.max(leastFrac, Math.min(mostFrac, frac)) });
  const drag = (event: PointerEvent): void => {
    const box = area.current?.getBoundingClientRect();
    if (box && event.currentTarget.hasPointerCapture(event.pointerId)) size((box.bottom - event.clientY) / box.height);
  };
  const press = (event: KeyboardEvent): void => {
    if (event.key !== "ArrowUp" && event.key !== "ArrowDown") return;
    event.preventDefault();
    size(sizeFrac + (event.key === "ArrowUp" ? stepFrac : -stepFrac));
  };
  return (
    <div ref={area} className="profile-split">
      {children}
      {isOpen && !isElsewhere && (
        <>
          <hr
            className="divider"
            tabIndex={0}
            aria-label={profileWords.divider}
            aria-orientation="horizontal"
            aria-valuenow={Math.round(sizeFrac * 100)}
            title={profileWords.divider}
            onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
            onPointerMove={drag}
            onKeyDown={press}
          />
          <section className="profile" aria-label={profileWords.room} style={{ flexBasis: `${sizeFrac * 100}%` }}>
            <ProfilePanel open={open} />
          </section>
        </>
      )}
    </div>
  );
}
