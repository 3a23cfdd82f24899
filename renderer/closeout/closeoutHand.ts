import type { AskedReading } from "../../core/closeout/askedReadings.ts";
import type { StandingState } from "../../core/closeout/standing.ts";
import type { Subject } from "../../core/closeout/subject.ts";
import { runCommand } from "../app/edits.ts";
import type { Session } from "../app/session.ts";
import type { CloseoutView } from "./closeoutView.ts";

/** Changes what the closeout shows. */
export function setCloseout({ view }: Session, change: Partial<CloseoutView>): void {
  view.setState(({ closeout }) => ({ closeout: { ...closeout, ...change } }));
}

/** Who signs now, and when. */
export function signedNow({ view }: Session): { readonly by: string; readonly atIso: string } {
  return { by: view.getState().closeout.by.trim(), atIso: new Date().toISOString() };
}

type Read = { readonly value: number | null; readonly text: string };

/** Takes down a reading, or takes it back where nothing is read; true where it was kept. */
export function keepReading(session: Session, asked: AskedReading, read: Read | null): Promise<boolean> {
  if (!read) return runCommand(session, "reading.remove", { readingId: asked.id });
  const { subject, what, wavelengthNm } = asked;
  return runCommand(session, "reading.take", { ...subject, what, wavelengthNm, ...read, ...signedNow(session) });
}

/** Says that things have come to a state. */
export function reach(session: Session, subjects: readonly Subject[], state: StandingState): Promise<boolean> {
  return runCommand(session, "milestone.reach", { subjects, state, ...signedNow(session) });
}
