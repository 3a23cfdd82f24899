import type { KeyboardEvent } from "react";
import { nearestPole, type Profile, stepAt } from "../../core/plant/profile.ts";
import { formatLength } from "../../core/units/formatLength.ts";
import { chooseAndShow } from "../app/look.ts";
import { openRouteOf, type Session, tell, unitsOf } from "../app/session.ts";
import { titleOf } from "../panels/words.ts";
import { fitFrame, frameWith, zoomFrame } from "./frame.ts";
import { openHeight, setProfile } from "./profileHand.ts";
import { profileNow } from "./profileNow.ts";
import { stationLines } from "./stationWords.ts";
import { nextStop, stopsOf } from "./stops.ts";
import { attachmentName } from "./words.ts";

/** Keys of the profile: left and right walk, up and down choose an attachment, Enter types its height, the rest looks. */
export function pressOnProfile(session: Session, event: KeyboardEvent): void {
  const profile = profileNow(session);
  if (!profile || event.ctrlKey || event.metaKey || event.altKey) return;
  const act = actOf(session, profile, event.key);
  if (!act) return;
  event.preventDefault();
  event.stopPropagation();
  act();
}

function actOf(session: Session, profile: Profile, key: string): (() => void) | null {
  const { frame, atM } = session.view.getState().profile;
  const middle = [frame.widthPx / 2, frame.heightPx / 2] as const;
  switch (key) {
    case "ArrowRight":
      return () => walk(session, profile, 1);
    case "ArrowLeft":
      return () => walk(session, profile, -1);
    case "ArrowUp":
      return () => chooseAttachment(session, profile, 1);
    case "ArrowDown":
      return () => chooseAttachment(session, profile, -1);
    case "Enter":
      return () => openHeight(session);
    case "0":
      return () => setProfile(session, { frame: fitFrame(frame, profile) });
    case "2": {
      const step = stepAt(profile, atM ?? 0);
      return () =>
        step && setProfile(session, { frame: fitFrame(frame, profile, step.startM, step.startM + step.span.lengthM) });
    }
    case "+":
    case "=":
      return () => setProfile(session, { frame: zoomFrame(frame, middle, 1.4, 1.4) });
    case "-":
      return () => setProfile(session, { frame: zoomFrame(frame, middle, 1 / 1.4, 1 / 1.4) });
    default:
      return null;
  }
}

function walk(session: Session, profile: Profile, direction: 1 | -1): void {
  const { atM, frame } = session.view.getState().profile;
  const stop = nextStop(stopsOf(profile), atM, direction);
  if (!stop) return;
  setProfile(session, { atM: stop.stationM, frame: frameWith(frame, stop.stationM), attachmentId: null });
  chooseAndShow(session, [stop.ref]);
  const { plant } = openRouteOf(session);
  tell(
    session,
    [titleOf(plant, stop.ref), ...stationLines(plant, profile, stop.stationM, unitsOf(session.store.get()))].join(". "),
  );
}

function chooseAttachment(session: Session, profile: Profile, direction: 1 | -1): void {
  const { atM, attachmentId } = session.view.getState().profile;
  const pole = nearestPole(profile, atM ?? 0);
  if (!pole || pole.attachments.length === 0) return;
  const present = pole.attachments.findIndex((one) => one.id === attachmentId);
  const last = pole.attachments.length - 1;
  const next = present < 0 ? (direction === 1 ? 0 : last) : Math.min(last, Math.max(0, present + direction));
  const attachment = pole.attachments[next];
  if (!attachment) return;
  setProfile(session, { attachmentId: attachment.id, atM: pole.stationM });
  const height = formatLength(attachment.heightM, unitsOf(session.store.get()), "height");
  tell(session, `${attachmentName(attachment)}, ${height}, pole ${pole.tag}.`);
}
