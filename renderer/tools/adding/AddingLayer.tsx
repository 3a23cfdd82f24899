import { useEffect, useRef, useState } from "react";
import type { OpenRoute } from "../../app/routeStore.ts";
import { useSession, useView } from "../../app/useSession.ts";
import type { Picture } from "../../canvas/paint.ts";
import { useLatest } from "../../canvas/useLatest.ts";
import { focusDiagram } from "../DiagramField.tsx";
import { AddingPreview } from "./AddingPreview.tsx";
import { AddingStrip } from "./AddingStrip.tsx";
import { type AddingForm, type AddingState, type AddingTool, stepBack } from "./addingState.ts";
import { type Aim, aimAt, alongSpan } from "./aim.ts";
import { ask, clickWith } from "./clickWith.ts";
import { openTurns, type Turns } from "./turns.ts";

/** Width of a crossing or structure where somebody clicked without dragging, m. */
const clickedWidthM = 6;
const leastWidthM = 0.5;

/** A press on a span that may become a crossing or a structure. */
export type Pull = { readonly spanId: string; readonly fromM: number; readonly toM: number };

/** The glass over the diagram while a tool that adds is in hand: it takes the clicks, shows what they would do, and says what to click next. */
export function AddingLayer({ open, picture }: { readonly open: OpenRoute; readonly picture: Picture }) {
  const adding = useView((state) => state.adding);
  const [turns] = useState(openTurns);
  useEscape(turns);
  if (!adding) return null;
  return <Glass key={adding.tool} adding={adding} open={open} picture={picture} turns={turns} />;
}

type GlassProps = {
  readonly adding: AddingState;
  readonly open: OpenRoute;
  readonly picture: Picture;
  readonly turns: Turns;
};

function Glass({ adding, open, picture, turns }: GlassProps) {
  const glass = useRef<HTMLDivElement>(null);
  const { aim, pull } = useHand(glass, adding, picture, turns);
  useTypedLength(adding, aim);
  return (
    <>
      <div className="adding-glass" ref={glass} data-adding={adding.tool}>
        <AddingPreview adding={adding} picture={picture} aim={aim} pull={pull} />
      </div>
      <AddingStrip adding={adding} open={open} />
    </>
  );
}

function useHand(glass: React.RefObject<HTMLElement | null>, adding: AddingState, picture: Picture, turns: Turns) {
  const session = useSession();
  const [aim, setAim] = useState<Aim | null>(null);
  const [pull, setPull] = useState<Pull | null>(null);
  const latest = useLatest({ adding, picture });
  useEffect(() => {
    const element = glass.current;
    if (!element) return;
    let held: Pull | null = null;
    const click = (aim: Aim): void =>
      turns.take(() => {
        const { adding: inHand } = session.view.getState();
        return inHand ? clickWith(session, inHand, aim) : undefined;
      });
    const hold = (next: Pull | null): void => {
      held = next;
      setPull(next);
    };
    const aimOf = (event: PointerEvent): Aim => {
      const { x, y } = element.getBoundingClientRect();
      return aimAt(latest.current.picture, event.clientX - x, event.clientY - y);
    };
    const isOurs = (event: PointerEvent): boolean => event.button === 0 && !element.closest(".is-ready-to-pan");
    const down = (event: PointerEvent): void => {
      if (!isOurs(event)) return;
      event.stopPropagation();
      const { span } = aimOf(event);
      const { tool } = latest.current.adding;
      if ((tool !== "crossing" && tool !== "structure") || !span) return;
      element.setPointerCapture(event.pointerId);
      hold({ spanId: span.spanId, fromM: span.offsetM, toM: span.offsetM });
    };
    const move = (event: PointerEvent): void => {
      const next = aimOf(event);
      setAim(next);
      const at = held && alongSpan(latest.current.picture, held.spanId, next.x, next.y);
      if (held && at) hold({ ...held, toM: at.offsetM });
    };
    const up = (event: PointerEvent): void => {
      if (!isOurs(event)) return;
      event.stopPropagation();
      if (held) ask(session, drawnOn(held, latest.current.adding.tool));
      else click(aimOf(event));
      hold(null);
    };
    const stop = new AbortController();
    const { signal } = stop;
    element.addEventListener("pointerdown", down, { signal });
    element.addEventListener("pointermove", move, { signal });
    element.addEventListener("pointerup", up, { signal });
    element.addEventListener("mousedown", keepKeys, { signal });
    element.addEventListener("pointerleave", () => setAim(null), { signal });
    return () => stop.abort();
  }, [glass, session, latest, turns]);
  return { aim, pull };
}

function drawnOn({ spanId, fromM, toM }: Pull, tool: AddingTool): AddingForm {
  const drawnM = Math.abs(toM - fromM);
  const alongM = drawnM < leastWidthM ? clickedWidthM : drawnM;
  const offsetM = (fromM + toM) / 2;
  return tool === "structure"
    ? { kind: "structure", spanId, offsetM, lengthM: alongM }
    : { kind: "crossing", spanId, offsetM, widthM: alongM };
}

/** A figure typed while a line goes on begins the length of its next span, in the direction of the pointer. */
function useTypedLength({ tool, fromPoleId, form }: AddingState, aim: Aim | null): void {
  const session = useSession();
  const { view } = session;
  const canReach = (tool === "pole" || tool === "lateral") && form === null && aim !== null;
  const toward = canReach ? aim.point : null;
  useEffect(() => {
    if (fromPoleId === null || toward === null) return undefined;
    const listen = (event: KeyboardEvent): void => {
      const isOnDiagram = event.target instanceof Element && event.target.closest("[data-diagram]") !== null;
      if (!isOnDiagram || !/^[\d.]$/.test(event.key) || event.ctrlKey || event.metaKey || event.altKey) return;
      if (view.getState().drawnAs !== "ground") return;
      event.preventDefault();
      event.stopPropagation();
      ask(session, { kind: "reach", fromPoleId, toward, text: event.key });
    };
    window.addEventListener("keydown", listen, { capture: true });
    return () => window.removeEventListener("keydown", listen, { capture: true });
  }, [session, view, fromPoleId, toward]);
}

/** Escape takes one step back before anything else hears of it; after clicks whose edits are still under way. */
function useEscape(turns: Turns): void {
  const { view } = useSession();
  useEffect(() => {
    const listen = (event: KeyboardEvent): void => {
      const { adding, fault } = view.getState();
      if (event.key !== "Escape" || !adding || fault) return;
      event.preventDefault();
      event.stopPropagation();
      turns.take(() => {
        view.setState(({ adding: inHand }) => ({ adding: inHand && stepBack(inHand) }));
      });
      focusDiagram();
    };
    window.addEventListener("keydown", listen, { capture: true });
    return () => window.removeEventListener("keydown", listen, { capture: true });
  }, [view, turns]);
}

/** A click with a tool leaves the keys with the diagram. */
function keepKeys(event: MouseEvent): void {
  event.preventDefault();
  focusDiagram();
}
