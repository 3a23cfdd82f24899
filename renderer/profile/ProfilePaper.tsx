import { useEffect, useMemo, useRef } from "react";
import { Layer, Shape, Stage } from "react-konva";
import { type Profile, placeOnProfile } from "../../core/plant/profile.ts";
import { splitRef } from "../app/ref.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { useSession, useView } from "../app/useSession.ts";
import { drawFindingMark } from "../canvas/drawFindings.ts";
import { useLatest } from "../canvas/useLatest.ts";
import { useInk } from "../canvas/usePicture.ts";
import { drawGroundLine, drawOtherWires, drawOurLine } from "./drawLine.ts";
import { drawProfileHand } from "./drawProfileHand.ts";
import { drawScales } from "./drawScales.ts";
import { drawBelow, drawHungThings, drawProfilePoles } from "./drawThings.ts";
import { fitFrame, frameWith, stationX } from "./frame.ts";
import { HeightField } from "./HeightField.tsx";
import { HeldCard } from "./HeldCard.tsx";
import { ProfileList } from "./ProfileList.tsx";
import { profileFindings } from "./profileFindings.ts";
import { setProfile } from "./profileHand.ts";
import { offerProfileHandle } from "./profileHandle.ts";
import { pressOnProfile } from "./profileKeys.ts";
import { cablePassing } from "./profileNow.ts";
import { StationCard } from "./StationCard.tsx";
import { useProfilePointer } from "./useProfilePointer.ts";
import { profileWords } from "./words.ts";

const still = { listening: false, perfectDrawEnabled: false } as const;

/** The drawing of a profile, with what is told about the station under the hand. */
export function ProfilePaper({ open, profile }: { readonly open: OpenRoute; readonly profile: Profile }) {
  const session = useSession();
  const paper = useRef<HTMLDivElement>(null);
  const view = useView((state) => state.profile);
  const selection = useView((state) => state.selection);
  const ink = useInk();
  const units = unitsOf(open);
  const { frame, hand, atM } = view;
  const picture = useMemo(() => ({ profile, frame, ink }), [profile, frame, ink]);
  const marks = useMemo(() => profileFindings(open, picture), [open, picture]);
  usePaperSize(paper, profile);
  useFollowedSelection(open, profile);
  useProfilePointer(paper, picture);
  const latest = useLatest({ plant: open.plant, picture });
  useEffect(() => offerProfileHandle(() => latest.current, paper), [latest]);
  const plant = hand?.draft.plant ?? open.plant;
  const isFarRight = atM !== null && stationX(frame, atM) > frame.widthPx / 2;
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
        <Stage width={frame.widthPx} height={frame.heightPx} listening={false}>
          <Layer listening={false}>
            <Shape {...still} sceneFunc={(pen) => drawGroundLine(pen, picture)} />
            <Shape {...still} sceneFunc={(pen) => drawBelow(pen, picture)} />
            <Shape {...still} sceneFunc={(pen) => drawOtherWires(pen, picture)} />
            <Shape {...still} sceneFunc={(pen) => drawOurLine(pen, picture)} />
            <Shape {...still} sceneFunc={(pen) => drawHungThings(pen, picture)} />
            <Shape {...still} sceneFunc={(pen) => drawProfilePoles(pen, picture, units)} />
            <Shape
              {...still}
              sceneFunc={(pen) => {
                for (const mark of marks) drawFindingMark(pen, ink, mark, [mark.x, mark.y]);
              }}
            />
          </Layer>
          <Layer listening={false}>
            <Shape {...still} sceneFunc={(pen) => drawProfileHand(pen, plant, picture, view, selection)} />
            <Shape {...still} sceneFunc={(pen) => drawScales(pen, picture, units)} />
          </Layer>
        </Stage>
      </div>
      <div className={isFarRight ? "profile-cards is-left" : "profile-cards"}>
        {hand ? (
          <HeldCard hand={hand} units={units} />
        ) : (
          atM !== null && <StationCard plant={open.plant} profile={profile} stationM={atM} units={units} />
        )}
      </div>
      <HeightField open={open} picture={picture} />
      <ProfileList open={open} profile={profile} />
    </div>
  );
}

/** Keeps the frame as large as its place; shows the path whole when it comes in or another one does. */
function usePaperSize(paper: React.RefObject<HTMLElement | null>, profile: Profile): void {
  const session = useSession();
  const latest = useLatest(profile);
  const { cableId } = profile;
  // biome-ignore lint/correctness/useExhaustiveDependencies: another cable's path is shown whole
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
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- another cable's path is shown whole
  }, [paper, session, latest, cableId]);
}

/** What is chosen on the diagram is told and shown here too, on the cable that passes it. */
function useFollowedSelection({ plant }: OpenRoute, profile: Profile): void {
  const session = useSession();
  const chosen = useView((state) => state.selection.at(-1));
  const latest = useLatest(profile);
  const { cableId } = profile;
  useEffect(() => {
    if (chosen === undefined) return;
    const passing = cablePassing(plant, chosen, cableId);
    if (passing === null) return;
    if (passing !== cableId) {
      setProfile(session, { cableId: passing });
      return;
    }
    const place = placeOnProfile(plant, latest.current, splitRef(chosen));
    const { frame, hand } = session.view.getState().profile;
    if (place && !hand) setProfile(session, { atM: place.stationM, frame: frameWith(frame, place.stationM) });
  }, [plant, chosen, cableId, session, latest]);
}
