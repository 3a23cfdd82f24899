import { type RefObject, useEffect } from "react";
import type { Profile } from "../../core/plant/profile.ts";
import { chooseAndShow, goToFinding } from "../app/look.ts";
import { openRouteOf, type Session } from "../app/session.ts";
import { useSession } from "../app/useSession.ts";
import { useLatest } from "../canvas/useLatest.ts";
import { elevationAt, elevationY, panFrame, stationAt, zoomFrame } from "./frame.ts";
import { findingMarkPoint, findingsOnProfile, profileFindingMarks } from "./profileFindings.ts";
import { carryAttachment, hangAttachment, letProfileGo, setProfile, takeAttachment } from "./profileHand.ts";
import { attachmentUnder, type ProfileSight, rowUnder } from "./profileHit.ts";

/** Farther than this a press is a drag, px. */
const dragPx = 4;

type Gesture =
  | { readonly kind: "press"; readonly x: number; readonly y: number; readonly attachmentId: string | null }
  | { readonly kind: "pan"; readonly x: number; readonly y: number }
  /** Carries an attachment; `offPx` is how far beside it the hand took hold. */
  | { readonly kind: "carry"; readonly footM: number; readonly offPx: number }
  | { readonly kind: "none" };

/** Mouse, pen and wheel on the profile. */
export function useProfilePointer(paper: RefObject<HTMLElement | null>, profile: Profile): void {
  const session = useSession();
  const latest = useLatest(profile);
  useEffect(() => {
    const element = paper.current;
    if (!element) return undefined;
    let gesture: Gesture | null = null;
    const sight = (): ProfileSight => ({ profile: latest.current, frame: session.view.getState().profile.frame });
    const place = (event: MouseEvent): readonly [number, number] => {
      const box = element.getBoundingClientRect();
      return [event.clientX - box.x, event.clientY - box.y];
    };
    const handlers = {
      pointerdown(event: PointerEvent) {
        if (event.button > 1 || !isOnPaper(event)) return;
        const [x, y] = place(event);
        if (event.button === 1) event.preventDefault();
        element.setPointerCapture(event.pointerId);
        gesture = {
          kind: "press",
          x,
          y,
          attachmentId: event.button === 1 ? null : attachmentUnder(sight(), x, y),
        };
      },
      pointermove(event: PointerEvent) {
        const [x, y] = place(event);
        if (gesture) gesture = carryOn(session, sight(), gesture, [x, y], !event.ctrlKey && !event.metaKey);
        else if (isOnPaper(event)) setProfile(session, { atM: inPath(sight(), x) });
      },
      pointerup(event: PointerEvent) {
        const [x, y] = place(event);
        if (gesture?.kind === "press") click(session, sight(), x, y, gesture.attachmentId);
        if (gesture?.kind === "carry") void hangAttachment(session);
        gesture = null;
      },
      pointercancel() {
        letProfileGo(session);
        gesture = null;
      },
      pointerleave() {
        if (!gesture) setProfile(session, { atM: null });
      },
      wheel(event: WheelEvent) {
        event.preventDefault();
        const lines = event.deltaMode === 1 ? event.deltaY * 16 : event.deltaY || event.deltaX;
        const factor = Math.exp(-Math.max(-240, Math.min(240, lines)) * 0.0022);
        const [along, up] = [event.altKey ? 1 : factor, event.shiftKey ? 1 : factor];
        session.view.setState(({ profile }) => ({
          profile: { ...profile, frame: zoomFrame(profile.frame, place(event), along, up) },
        }));
      },
    };
    const listeners = Object.entries(handlers) as [keyof typeof handlers, (event: Event) => void][]; // entries widen the event of each handler
    for (const [name, listen] of listeners) element.addEventListener(name, listen, { passive: false });
    return () => {
      for (const [name, listen] of listeners) element.removeEventListener(name, listen);
    };
  }, [paper, session, latest]);
}

function carryOn(
  session: Session,
  sight: ProfileSight,
  gesture: Gesture,
  [x, y]: readonly [number, number],
  isSnapping: boolean,
): Gesture {
  const { frame } = sight;
  if (gesture.kind === "press") {
    if (Math.hypot(x - gesture.x, y - gesture.y) < dragPx) return gesture;
    if (gesture.attachmentId !== null)
      return takeHold(session, sight, gesture.attachmentId, [gesture.y, y], isSnapping);
  }
  if (gesture.kind === "carry") {
    // Escape gives it up while the button is still down
    if (!session.view.getState().profile.hand) return { kind: "none" };
    carryAttachment(session, elevationAt(frame, y - gesture.offPx) - gesture.footM, isSnapping);
    return gesture;
  }
  if (gesture.kind === "none") return gesture;
  session.view.setState(({ profile }) => ({
    profile: { ...profile, frame: panFrame(profile.frame, x - gesture.x, y - gesture.y) },
  }));
  return { kind: "pan", x, y };
}

function takeHold(
  session: Session,
  { profile, frame }: ProfileSight,
  attachmentId: string,
  [pressedY, y]: readonly [number, number],
  isSnapping: boolean,
): Gesture {
  const pole = profile.poles.find((one) => one.attachments.some(({ id }) => id === attachmentId));
  const attachment = pole?.attachments.find(({ id }) => id === attachmentId);
  if (!pole || !attachment || !takeAttachment(session, attachmentId)) return { kind: "none" };
  const offPx = pressedY - elevationY(frame, pole.footM + attachment.heightM);
  carryAttachment(session, elevationAt(frame, y - offPx) - pole.footM, isSnapping);
  setProfile(session, { atM: pole.stationM });
  return { kind: "carry", footM: pole.footM, offPx };
}

function click(session: Session, sight: ProfileSight, x: number, y: number, attachmentId: string | null): void {
  const open = openRouteOf(session);
  const { frame } = sight;
  const mark = profileFindingMarks(findingsOnProfile(open, sight.profile), frame).find((one) => {
    const [markX, markY] = findingMarkPoint(frame, one);
    return Math.hypot(markX - x, markY - y) <= 11;
  });
  const finding = mark?.keys.map((key) => open.findings.get(key)).find((one) => one !== undefined);
  if (finding) {
    goToFinding(session, finding);
    return;
  }
  const attachment = attachmentId === null ? undefined : open.route.attachment.get(attachmentId);
  setProfile(session, { attachmentId: attachment?.id ?? null, typed: null });
  if (attachment) {
    chooseAndShow(session, [`pole/${attachment.poleId}`]);
    return;
  }
  const ref = rowUnder(sight, x, y);
  if (ref) chooseAndShow(session, [ref]);
  else session.view.setState({ selection: [] });
}

function inPath({ profile, frame }: ProfileSight, x: number): number {
  return Math.min(profile.lengthM, Math.max(0, stationAt(frame, x)));
}

/** The paper itself, not a field that lies on it. */
function isOnPaper({ target }: Event): boolean {
  return target instanceof Element && target.closest(".diagram-field") === null;
}
