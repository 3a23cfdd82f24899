import { metresPerInch } from "../../core/units/constants.ts";
import { working } from "../app/actions/action.ts";
import { runCommand } from "../app/edits.ts";
import { splitRef } from "../app/ref.ts";
import { openRouteOf, type Session, tell, unitsOf } from "../app/session.ts";
import type { Direction } from "../canvas/walk.ts";
import { lockedWords } from "./kinds.ts";
import { toolWords } from "./words.ts";

/** Nudges under way: those of one thing that follow each other within the pause are one step of undo. */
export type Nudging = {
  readonly terminalId: string;
  readonly gestureId: string;
  readonly lastMs: number;
  /** What keys have asked for and no edit has done yet, m along the span. */
  readonly waitingM: number;
  readonly isRunning: boolean;
};

/** A longer rest than this between two nudges ends their step, ms. */
const pauseMs = 3000;

const stepM = { us: metresPerInch, metric: 0.01 } as const;
const headings = { left: [-1, 0], right: [1, 0], up: [0, 1], down: [0, -1] } as const;

/** The one chosen terminal, which arrows nudge; null where something else or more is chosen. */
export function nudgedTerminal(session: Session): string | null {
  const [only, ...more] = session.view.getState().selection;
  if (only === undefined || more.length > 0) return null;
  const { table, id } = splitRef(only);
  return table === "terminal" ? id : null;
}

/** Nudges the chosen terminal along its strand: an inch or a centimetre a step, by the units of the route. */
export async function nudge(session: Session, terminalId: string, to: Direction, stepCount: number): Promise<void> {
  const { view } = session;
  const reason = working(session) ?? lockedWords(view.getState().kinds, "terminal");
  const heading = reason === null ? alongHeading(session, terminalId, to) : 0;
  if (heading === 0) return tell(session, reason ?? toolWords.acrossStrand);
  const byM = heading * stepCount * stepM[unitsOf(session.store.get())];
  const former = view.getState().nudging;
  const nowMs = performance.now();
  const isSame = former?.terminalId === terminalId && (former.isRunning || nowMs - former.lastMs < pauseMs);
  const gestureId = isSame ? former.gestureId : crypto.randomUUID();
  const waitingM = (isSame ? former.waitingM : 0) + byM;
  const isRunning = isSame && former.isRunning;
  view.setState({ nudging: { terminalId, gestureId, lastMs: nowMs, waitingM, isRunning } });
  if (!isRunning) await runWaiting(session);
}

/** Runs what the keys have asked for, whole after whole, so that no key is lost while an edit is answered. */
async function runWaiting(session: Session): Promise<void> {
  const { view } = session;
  for (let now = view.getState().nudging; now && now.waitingM !== 0; now = view.getState().nudging) {
    const { terminalId, gestureId, waitingM } = now;
    view.setState({ nudging: { ...now, waitingM: 0, isRunning: true } });
    const { plant } = openRouteOf(session);
    const { spanId, offsetM } = plant.rowOf("terminal", terminalId);
    const wantedM = offsetM + waitingM;
    const isInside = wantedM > 0 && wantedM < plant.rowOf("span", spanId).lengthM;
    if (!isInside) tell(session, toolWords.strandEnds);
    else await runCommand(session, "terminal.move", { terminalId, spanId, offsetM: wantedM }, gestureId);
    const after = view.getState().nudging;
    if (after) view.setState({ nudging: { ...after, isRunning: false, lastMs: performance.now() } });
  }
}

/** 1 where the way of an arrow leads from the span's first pole on, -1 where it leads back, 0 where it leads across. */
function alongHeading(session: Session, terminalId: string, to: Direction): -1 | 0 | 1 {
  const { plant } = openRouteOf(session);
  const span = plant.rowOf("span", plant.rowOf("terminal", terminalId).spanId);
  const from = plant.rowOf("pole", span.fromPoleId);
  const far = plant.rowOf("pole", span.toPoleId);
  const [east, north] = headings[to];
  const ahead = (far.eastM - from.eastM) * east + (far.northM - from.northM) * north;
  const chordM = Math.hypot(far.eastM - from.eastM, far.northM - from.northM);
  if (Math.abs(ahead) < chordM * 0.2) return 0;
  return ahead > 0 ? 1 : -1;
}
