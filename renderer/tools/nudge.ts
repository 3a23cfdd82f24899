import { working } from "../app/actions/action.ts";
import { runCommand } from "../app/edits.ts";
import { openRouteOf, type Session, tell, unitsOf } from "../app/session.ts";
import type { Direction } from "../canvas/walk.ts";
import { lockedWords } from "./kinds.ts";
import { type Nudged, nudgedOf, nudgeStepM, nudgeSteps } from "./nudged.ts";
import { toolWords } from "./words.ts";

/** Nudges under way: those of the same things that follow each other within the pause are one step of undo. */
export type Nudging = {
  readonly nudged: Nudged;
  readonly gestureId: string;
  readonly lastMs: number;
  /** What keys have asked for and no edit has done yet, steps to the right and up the page. */
  readonly waiting: readonly [right: number, up: number];
  readonly isRunning: boolean;
};

/** A longer rest than this between two nudges ends their step, ms. */
const pauseMs = 3000;

const headings = { left: [-1, 0], right: [1, 0], up: [0, 1], down: [0, -1] } as const;

/** What arrows nudge now; null where they walk. */
export function nudgedNow(session: Session): Nudged | null {
  return nudgedOf(session.view.getState().selection);
}

/** Nudges what is chosen: an inch or a centimetre a step, by the units of the route. */
export async function nudge(session: Session, nudged: Nudged, to: Direction, stepCount: number): Promise<void> {
  const { view } = session;
  const { kinds, drawnAs, nudging: former } = view.getState();
  const locked = nudged.rows.map((row) => lockedWords(kinds, row.table)).find((one) => one !== null);
  const isOffGround = nudged.isOnGround && drawnAs !== "ground";
  const reason = working(session) ?? locked ?? (isOffGround ? toolWords.groundOnly : null);
  if (reason !== null) return tell(session, reason);
  const nowMs = performance.now();
  const isSame = former?.nudged.key === nudged.key && (former.isRunning || nowMs - former.lastMs < pauseMs);
  const [right, up] = isSame ? former.waiting : [0, 0];
  const [east, north] = headings[to];
  view.setState({
    nudging: {
      nudged,
      gestureId: isSame ? former.gestureId : crypto.randomUUID(),
      lastMs: nowMs,
      waiting: [right + east * stepCount, up + north * stepCount],
      isRunning: isSame && former.isRunning,
    },
  });
  if (!(isSame && former.isRunning)) await runWaiting(session);
}

/** Runs what the keys have asked for, whole after whole, so that no key is lost while an edit is answered. */
async function runWaiting(session: Session): Promise<void> {
  const { view } = session;
  for (let now = view.getState().nudging; now && isAsked(now); now = view.getState().nudging) {
    const { nudged, gestureId, waiting } = now;
    view.setState({ nudging: { ...now, waiting: [0, 0], isRunning: true } });
    await runOnce(session, nudged, gestureId, waiting);
    const after = view.getState().nudging;
    if (after) view.setState({ nudging: { ...after, isRunning: false, lastMs: performance.now() } });
  }
}

function isAsked({ waiting }: Nudging): boolean {
  return waiting[0] !== 0 || waiting[1] !== 0;
}

async function runOnce(
  session: Session,
  nudged: Nudged,
  gestureId: string,
  [right, up]: Nudging["waiting"],
): Promise<void> {
  const units = unitsOf(session.store.get());
  const stepM = nudgeStepM(units);
  const asked = nudgeSteps(openRouteOf(session).plant, session.view.getState().drawnAs, nudged, [
    right * stepM,
    up * stepM,
  ]);
  if (!asked.ok) return tell(session, asked.what);
  const [only, other] = asked.steps;
  const isDone =
    only && !other
      ? await runCommand(session, only.command, only.input, { gestureId })
      : await runCommand(session, "steps.run", { label: asked.label, steps: asked.steps }, { gestureId });
  if (isDone) tell(session, toolWords.nudged(asked.label, units));
}
