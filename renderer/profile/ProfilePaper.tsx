import { useEffect, useRef } from "react";
import { type Profile, profileAlong } from "../../core/plant/profile.ts";
import { placeOnProfile } from "../../core/plant/profilePlace.ts";
import { refKey, splitRef } from "../app/ref.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { useSession, useView } from "../app/useSession.ts";
import { useLatest } from "../canvas/useLatest.ts";
import { fitFrame, frameWith, stationX } from "./frame.ts";
import { HeightField } from "./HeightField.tsx";
import { HeldCard } from "./HeldCard.tsx";
import { ProfileList } from "./ProfileList.tsx";
import { ProfileStage } from "./ProfileStage.tsx";
import { setProfile } from "./profileHand.ts";
import { offerProfileHandle } from "./profileHandle.ts";
import { pressOnProfile } from "./profileKeys.ts";
import { wayPassing } from "./profileNow.ts";
import { StationCard } from "./StationCard.tsx";
import { useProfilePointer } from "./useProfilePointer.ts";
import { profileWords } from "./words.ts";

type Props = { readonly open: OpenRoute; readonly profile: Profile };

/** The drawing of a profile, with what is told about the station under the hand. */
export function ProfilePaper({ open, profile }: Props) {
  const session = useSession();
  const paper = useRef<HTMLDivElement>(null);
  usePaperSize(paper, profile);
  useFollowedSelection(open, profile);
  useProfilePointer(paper, profile);
  const latest = useLatest({ plant: open.plant, profile });
  useEffect(() => {
    const now = () => ({ ...latest.current, frame: session.view.getState().profile.frame });
    offerProfileHandle(now, paper);
  }, [latest, session]);
  return (
    <div className="profile-paper" ref={paper}>
      <div
        className="profile-hand"
        data-profile
        role="application"
        aria-roledescription="profile"
        aria-label={profileWords.hand}
        aria-describedby="described-profile"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a drawing one walks by arrow keys takes the focus
        tabIndex={0}
        onKeyDown={(event) => pressOnProfile(session, event)}
      >
        <ProfileStage open={open} profile={profile} />
      </div>
      <Cards open={open} profile={profile} />
      <HeightField open={open} profile={profile} />
      <ProfileList open={open} profile={profile} />
    </div>
  );
}

/** What is held, else the station under the hand, in figures, on the side where the hand is not. */
function Cards({ open, profile }: Props) {
  const { hand, atM, frame } = useView((state) => state.profile);
  const units = unitsOf(open);
  const isFarRight = atM !== null && stationX(frame, atM) > frame.widthPx / 2;
  return (
    <div className={isFarRight ? "profile-cards is-left" : "profile-cards"}>
      {hand ? (
        <HeldCard hand={hand} units={units} />
      ) : (
        atM !== null && <StationCard plant={open.plant} profile={profile} stationM={atM} units={units} />
      )}
    </div>
  );
}

/** Keeps the frame as large as its place; shows the way whole when it comes in or another one does. */
function usePaperSize(paper: React.RefObject<HTMLElement | null>, profile: Profile): void {
  const session = useSession();
  const latest = useLatest(profile);
  const { way } = profile;
  // biome-ignore lint/correctness/useExhaustiveDependencies: another way is shown whole
  useEffect(() => {
    const element = paper.current;
    if (!element) return undefined;
    let isFitted = false;
    const observer = new ResizeObserver(() => {
      const { clientWidth: widthPx, clientHeight: heightPx } = element;
      const sized = { ...session.view.getState().profile.frame, widthPx, heightPx };
      setProfile(session, { frame: isFitted ? sized : fitFrame(sized, latest.current) });
      isFitted = true;
    });
    observer.observe(element);
    return () => observer.disconnect();
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- another way is shown whole
  }, [paper, session, latest, way.table, way.id]);
}

/** What is chosen on the diagram is told and shown here too, on the way that passes it. A way picked here stays, whatever is chosen. */
function useFollowedSelection({ plant }: OpenRoute, profile: Profile): void {
  const session = useSession();
  const chosen = useView((state) => state.selection.at(-1));
  const latest = useLatest(profile);
  useEffect(() => {
    if (chosen === undefined) return;
    const { way } = latest.current;
    const passing = wayPassing(plant, chosen, way);
    const place = passing && placeOnProfile(plant, profileAlong(plant, passing), splitRef(chosen));
    const { frame, hand } = session.view.getState().profile;
    if (!place || hand) return;
    const atM = place.stationM;
    if (passing.table === way.table && passing.id === way.id)
      setProfile(session, { atM, frame: frameWith(frame, atM) });
    else setProfile(session, { atM, way: refKey(passing.table, passing.id) });
  }, [plant, chosen, session, latest]);
}
