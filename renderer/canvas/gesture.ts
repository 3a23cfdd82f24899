import { chooseAndShow, goToFinding } from "../app/look.ts";
import type { RefKey } from "../app/ref.ts";
import { openRouteOf, type Session, tell } from "../app/session.ts";
import { carry, letGo, takeHold } from "../tools/carry.ts";
import type { Grip } from "../tools/grip.ts";
import { addMeasured } from "../tools/measure.ts";
import { refsEnclosed, refsTouched } from "../tools/touching.ts";
import { hitAll, hitFinding } from "./hitTest.ts";
import type { Picture } from "./paint.ts";
import { groundAt, panBy } from "./viewport.ts";

/** What the hand is doing: pressed and still, moving the ground, drawing a box, or holding a thing. */
export type Gesture =
  | {
      readonly kind: "press";
      readonly x: number;
      readonly y: number;
      readonly isBox: boolean;
      readonly isPan: boolean;
      readonly grip: Grip | null;
    }
  | { readonly kind: "hold"; readonly grip: Grip; readonly isHeld: boolean }
  | { readonly kind: "pan"; readonly x: number; readonly y: number }
  | { readonly kind: "box"; readonly x: number; readonly y: number; readonly toX: number; readonly toY: number };

export type PressKeys = {
  readonly shiftKey: boolean;
  readonly altKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
};

/** Farther than this a press is a drag, px. */
const dragPx = 4;

/** The gesture after the pointer moved; moves the ground where it drags it, and what the hand holds. */
export function carryOn(
  session: Session,
  picture: Picture,
  gesture: Gesture,
  [x, y]: readonly [number, number],
  keys: PressKeys,
): Gesture {
  if (gesture.kind === "box") return { ...gesture, toX: x, toY: y };
  if (gesture.kind === "hold") return hold(session, picture, gesture, [x, y], keys);
  if (gesture.kind === "press") {
    if (Math.hypot(x - gesture.x, y - gesture.y) < dragPx) return gesture;
    if (gesture.isBox) return { kind: "box", x: gesture.x, y: gesture.y, toX: x, toY: y };
    const { grip } = gesture;
    if (grip) {
      const isHeld = takeHold(session, grip);
      if (isHeld) carry(session, picture, grip, [x, y], isSnapping(keys));
      return { kind: "hold", grip, isHeld };
    }
  }
  const dx = x - gesture.x;
  const dy = y - gesture.y;
  session.view.setState((state) => ({ viewport: panBy(state.viewport, dx, dy), hover: null }));
  return { kind: "pan", x, y };
}

/** Escape gives the thing up while the button is still down: then nothing is carried any more. */
function hold(
  session: Session,
  picture: Picture,
  gesture: Extract<Gesture, { kind: "hold" }>,
  to: readonly [number, number],
  keys: PressKeys,
): Gesture {
  const { hand, exact } = session.view.getState();
  const isHeld = gesture.isHeld && (hand !== null || exact !== null);
  if (isHeld) carry(session, picture, gesture.grip, to, isSnapping(keys));
  return { ...gesture, isHeld };
}

/** Mod suspends snapping while it is held. */
function isSnapping(keys: PressKeys): boolean {
  return !isMod(keys);
}

function isMod(keys: PressKeys): boolean {
  return keys.ctrlKey || keys.metaKey;
}

/**
 * What a finished gesture means: a click chooses, a box chooses what it encloses or with Alt what it touches, with Mod beside
 * what is chosen already.
 */
export function finish(session: Session, picture: Picture, gesture: Gesture, keys: PressKeys): void {
  if (gesture.kind === "box") {
    const a = groundAt(picture.view, gesture.x, gesture.y);
    const b = groundAt(picture.view, gesture.toX, gesture.toY);
    const box = {
      westM: Math.min(a.eastM, b.eastM),
      eastM: Math.max(a.eastM, b.eastM),
      southM: Math.min(a.northM, b.northM),
      northM: Math.max(a.northM, b.northM),
    };
    const taken = keys.altKey ? refsTouched(picture, box) : refsEnclosed(picture, box);
    const former = isMod(keys) ? session.view.getState().selection : [];
    const refs = [...new Set([...former, ...taken])];
    session.view.setState({ selection: refs });
    tell(session, `${refs.length} chosen.`);
    return;
  }
  if (gesture.kind === "hold") void letGo(session);
  if (gesture.kind === "press" && !gesture.isPan) click(session, picture, gesture.x, gesture.y, keys);
}

function click(session: Session, picture: Picture, x: number, y: number, keys: PressKeys): void {
  if (session.view.getState().measure) {
    addMeasured(session, picture, x, y);
    return;
  }
  const finding = hitFinding(picture, x, y);
  if (finding) {
    const first = finding.keys.map((key) => openRouteOf(session).findings.get(key)).find((one) => one !== undefined);
    if (first) goToFinding(session, first);
    return;
  }
  const refs = hitAll(picture, x, y);
  const { selection } = session.view.getState();
  const hit = keys.altKey ? nextOf(refs, selection.at(-1)) : refs[0];
  if (!hit) {
    if (!keys.shiftKey) session.view.setState({ selection: [] });
    return;
  }
  if (!keys.shiftKey) {
    session.view.setState({ selection: [hit] });
    return;
  }
  const rest = selection.filter((one) => one !== hit);
  session.view.setState({ selection: rest.length < selection.length ? rest : [...selection, hit] });
}

function nextOf(refs: readonly RefKey[], present: RefKey | undefined): RefKey | undefined {
  const position = present ? refs.indexOf(present) : -1;
  return refs[(position + 1) % Math.max(1, refs.length)];
}

/** Chooses a row reached by keys and says what it is. */
export function stepTo(session: Session, ref: RefKey, title: string): void {
  chooseAndShow(session, [ref]);
  tell(session, title);
}
