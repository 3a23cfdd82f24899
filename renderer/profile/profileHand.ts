import { metresPerInch } from "../../core/units/constants.ts";
import { formatLength } from "../../core/units/formatLength.ts";
import { parseLengthM } from "../../core/units/parseLength.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import { working } from "../app/actions/action.ts";
import { runCommand } from "../app/edits.ts";
import { openRouteOf, type Session, tell, unitsOf } from "../app/session.ts";
import { openDraft } from "./draft.ts";
import type { ProfileView } from "./profileView.ts";
import { profileWords } from "./words.ts";

const leastHeightM = 0.05;

/** Changes what the eye and hand are at in the profile. */
export function setProfile({ view }: Session, change: Partial<ProfileView>): void {
  view.setState(({ profile }) => ({ profile: { ...profile, ...change } }));
}

/** Takes hold of an attachment; false, with the reason said, where the route may not be changed now. */
export function takeAttachment(session: Session, attachmentId: string): boolean {
  const reason = working(session);
  if (reason !== null) {
    tell(session, reason);
    return false;
  }
  const { route } = openRouteOf(session);
  const attachment = route.attachment.get(attachmentId);
  if (!attachment) return false;
  const hand = { attachmentId, heightM: attachment.heightM, draft: openDraft(route, attachmentId) };
  setProfile(session, { attachmentId, hand, typed: null });
  return true;
}

/**
 * Carries the attachment to a height; nothing is changed until it is let go.
 *
 * @param isSnapping  whether it stops at whole inches or centimetres
 */
export function carryAttachment(session: Session, wantedM: number, isSnapping: boolean): void {
  const { hand } = session.view.getState().profile;
  if (!hand) return;
  const unitM = unitsOf(session.store.get()) === "us" ? metresPerInch : 0.01;
  const heightM = Math.max(leastHeightM, isSnapping ? Math.round(wantedM / unitM) * unitM : wantedM);
  if (hand.draft.hang(heightM)) setProfile(session, { hand: { ...hand, heightM } });
}

/** Lets the attachment go where it is: one edit. The preview stays until the edit is answered. */
export async function hangAttachment(session: Session): Promise<void> {
  const { hand } = session.view.getState().profile;
  if (!hand) return;
  const { attachmentId, heightM } = hand;
  const present = openRouteOf(session).route.attachment.get(attachmentId);
  if (present && Math.abs(present.heightM - heightM) > 1e-9)
    await runCommand(session, "attachment.set", { attachmentId, heightM });
  // what has been taken hold of meanwhile stays in the hand
  if (session.view.getState().profile.hand === hand) setProfile(session, { hand: null });
}

/** Gives a drag or a height being typed up; nothing has changed. False where there was neither. */
export function letProfileGo(session: Session): boolean {
  const { hand, typed } = session.view.getState().profile;
  if (!hand && typed === null) return false;
  setProfile(session, { hand: null, typed: null });
  return true;
}

/** Opens the field for the height of the chosen attachment. */
export function openHeight(session: Session): void {
  const { attachmentId } = session.view.getState().profile;
  const attachment = attachmentId === null ? undefined : openRouteOf(session).route.attachment.get(attachmentId);
  const reason = working(session);
  if (reason !== null) tell(session, reason);
  else if (attachment)
    setProfile(session, { typed: formatLength(attachment.heightM, unitsOf(session.store.get()), "height") });
}

/** The height a text means, m, or what is wrong with it. */
export function typedHeight(
  text: string,
  units: UnitSystem,
): { readonly ok: true; readonly heightM: number } | { readonly ok: false; readonly what: string } {
  const parsed = parseLengthM(text, units);
  if (!parsed.ok) return { ok: false, what: `${parsed.what} ${parsed.mend}` };
  return parsed.valueM > 0 ? { ok: true, heightM: parsed.valueM } : { ok: false, what: profileWords.notPositive };
}

/** Hangs the chosen attachment at the typed height; what cannot be read stays in the field and changes nothing. */
export async function keepHeight(session: Session): Promise<void> {
  const { attachmentId, typed } = session.view.getState().profile;
  if (attachmentId === null || typed === null) return;
  const height = typedHeight(typed, unitsOf(session.store.get()));
  if (!height.ok) return tell(session, height.what);
  setProfile(session, { typed: null });
  await runCommand(session, "attachment.set", { attachmentId, heightM: height.heightM });
}
