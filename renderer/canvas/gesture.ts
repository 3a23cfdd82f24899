import { chooseAndShow, goToFinding } from "../app/look.ts";
import type { RefKey } from "../app/ref.ts";
import { openRouteOf, type Session, tell } from "../app/session.ts";
import { hitAll, hitFinding, refsWithin } from "./hitTest.ts";
import type { Picture } from "./paint.ts";
import { groundAt, panBy } from "./viewport.ts";

/** What the hand is doing: pressed and still, moving the ground, or drawing a box. */
export type Gesture =
  | { readonly kind: "press"; readonly x: number; readonly y: number; readonly isBox: boolean; readonly isPan: boolean }
  | { readonly kind: "pan"; readonly x: number; readonly y: number }
  | { readonly kind: "box"; readonly x: number; readonly y: number; readonly toX: number; readonly toY: number };

export type PressKeys = { readonly shiftKey: boolean; readonly altKey: boolean };

/** Farther than this a press is a drag, px. */
const dragPx = 4;

/** The gesture after the pointer moved; moves the ground where it drags it. */
export function carryOn(session: Session, gesture: Gesture, x: number, y: number): Gesture {
  if (gesture.kind === "box") return { ...gesture, toX: x, toY: y };
  if (gesture.kind === "press") {
    if (Math.hypot(x - gesture.x, y - gesture.y) < dragPx) return gesture;
    if (gesture.isBox) return { kind: "box", x: gesture.x, y: gesture.y, toX: x, toY: y };
  }
  const dx = x - gesture.x;
  const dy = y - gesture.y;
  session.view.setState((state) => ({ viewport: panBy(state.viewport, dx, dy), hover: null }));
  return { kind: "pan", x, y };
}

/** What a finished gesture means: a click chooses, a box chooses what lies in it. */
export function finish(session: Session, picture: Picture, gesture: Gesture, keys: PressKeys): void {
  if (gesture.kind === "box") {
    const a = groundAt(picture.view, gesture.x, gesture.y);
    const b = groundAt(picture.view, gesture.toX, gesture.toY);
    const refs = refsWithin(picture, {
      westM: Math.min(a.eastM, b.eastM),
      eastM: Math.max(a.eastM, b.eastM),
      southM: Math.min(a.northM, b.northM),
      northM: Math.max(a.northM, b.northM),
    });
    session.view.setState({ selection: refs });
    tell(session, `${refs.length} chosen.`);
    return;
  }
  if (gesture.kind === "press" && !gesture.isPan) click(session, picture, gesture.x, gesture.y, keys);
}

function click(session: Session, picture: Picture, x: number, y: number, keys: PressKeys): void {
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
