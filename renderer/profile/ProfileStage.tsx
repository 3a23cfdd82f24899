import { memo, useMemo } from "react";
import { Layer, Shape, Stage } from "react-konva";
import { type Profile, profileWith } from "../../core/plant/profile.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { useView } from "../app/useSession.ts";
import { useMeasure } from "../canvas/useMeasure.ts";
import { useInk } from "../canvas/usePicture.ts";
import { drawLand, drawMarks, drawPlant } from "./drawProfile.ts";
import { drawProfileHand } from "./drawProfileHand.ts";
import { drawScales } from "./drawScales.ts";
import { findingsOnProfile, type ProfileFindingMark, profileFindingMarks } from "./profileFindings.ts";
import { marksOver, type ProfileLook, type ProfileScene, partedScene, profileScene } from "./profileScene.ts";

const still = { listening: false, perfectDrawEnabled: false } as const;

/**
 * The drawing of a profile. While an attachment is dragged its pole and spans are drawn on the upper layer, and the lower one, with all
 * the rest, stays as it is.
 */
export function ProfileStage({ open, profile }: { readonly open: OpenRoute; readonly profile: Profile }) {
  const { frame, hand, atM, attachmentId } = useView((state) => state.profile);
  const selection = useView((state) => state.selection);
  const ink = useInk();
  const units = unitsOf(open);
  const measure = useMeasure();
  const look = useMemo(() => ({ frame, ink, units }), [frame, ink, units]);
  const { pxPerM, upPxPerM } = frame;
  const findings = useMemo(() => findingsOnProfile(open, profile), [open, profile]);
  const marks = useMemo(() => profileFindingMarks(findings, { pxPerM, upPxPerM }), [findings, pxPerM, upPxPerM]);
  const heldPoleId = hand ? open.route.attachment.get(hand.attachmentId)?.poleId : undefined;
  const whole = useMemo(() => profileScene(open.plant, profile, look, measure), [open.plant, profile, look, measure]);
  const lower = useMemo(
    () => (heldPoleId === undefined ? whole : partedScene(whole, heldPoleId).still),
    [whole, heldPoleId],
  );
  const plant = hand?.draft.plant ?? open.plant;
  const shown = heldPoleId === undefined ? profile : profileWith(profile, plant, heldPoleId);
  return (
    <Stage width={frame.widthPx} height={frame.heightPx} listening={false}>
      <StillLayer look={look} whole={whole} lower={lower} marks={marks} />
      <Layer listening={false}>
        <Shape
          {...still}
          sceneFunc={(pen) => {
            if (heldPoleId === undefined) return;
            const { moving } = partedScene(profileScene(plant, shown, look, measure), heldPoleId);
            drawPlant(pen, look, moving);
            drawMarks(pen, look, marksOver(moving, marks));
          }}
        />
        <Shape
          {...still}
          sceneFunc={(pen) =>
            drawProfileHand(pen, look, plant, { profile: shown, frame }, { atM, attachmentId, hand, selection })
          }
        />
        <Shape {...still} sceneFunc={(pen) => drawScales(pen, look, profile.lengthM)} />
      </Layer>
    </Stage>
  );
}

type StillProps = {
  readonly look: ProfileLook;
  readonly whole: ProfileScene;
  readonly lower: ProfileScene;
  readonly marks: readonly ProfileFindingMark[];
};

/** What no drag moves: drawn again only when one of these is another. */
const StillLayer = memo(function StillLayer({ look, whole, lower, marks }: StillProps) {
  return (
    <Layer listening={false}>
      <Shape
        {...still}
        sceneFunc={(pen) => {
          drawLand(pen, look, whole);
          drawPlant(pen, look, lower);
          drawMarks(pen, look, marks);
        }}
      />
    </Layer>
  );
});
