import { type KeyboardEvent, type PointerEvent, useLayoutEffect, useRef } from "react";
import { boundedPx } from "./panelLayout.ts";
import { plainPanels } from "./plainLayout.ts";
import { useSession, useView } from "./useSession.ts";
import { words } from "./words.ts";

const stepPx = 16;

/** What a divider sizes: the panel after it. */
const edges = {
  side: { field: "sideWidthPx", name: words.sideWidth, isUpright: true },
  findings: { field: "findingsHeightPx", name: words.findingsHeight, isUpright: false },
} as const;

/** A line between panels that sizes the one after it: by dragging, by arrow keys, back by a double click. */
export function Divider({ edge }: { readonly edge: keyof typeof edges }) {
  const { field, name, isUpright } = edges[edge];
  const { view } = useSession();
  const sizePx = useView((state) => state[field]);
  const line = useRef<HTMLHRElement>(null);
  const windowPx = isUpright ? window.innerWidth : window.innerHeight;
  const shownPx = boundedPx(sizePx, windowPx);
  const size = (px: number): void => view.setState({ [field]: boundedPx(px, windowPx) });
  useLayoutEffect(() => {
    const panel = line.current?.nextElementSibling;
    if (!(panel instanceof HTMLElement)) return undefined;
    const sized = isUpright ? "width" : "height";
    panel.style[sized] = `${shownPx}px`;
    return () => {
      panel.style[sized] = "";
    };
  }, [shownPx, isUpright]);
  const drag = (event: PointerEvent): void => {
    if (!line.current?.hasPointerCapture(event.pointerId)) return;
    const end = line.current.nextElementSibling?.getBoundingClientRect();
    if (end) size(isUpright ? end.right - event.clientX : end.bottom - event.clientY);
  };
  const press = (event: KeyboardEvent): void => {
    const larger = isUpright ? "ArrowLeft" : "ArrowUp";
    const smaller = isUpright ? "ArrowRight" : "ArrowDown";
    if (event.key !== larger && event.key !== smaller) return;
    event.preventDefault();
    size(shownPx + (event.key === larger ? stepPx : -stepPx));
  };
  return (
    <hr
      ref={line}
      className={isUpright ? "divider is-upright" : "divider"}
      tabIndex={0}
      aria-label={name}
      aria-orientation={isUpright ? "vertical" : "horizontal"}
      aria-valuenow={shownPx}
      title={words.dividerTold(name)}
      onPointerDown={(event) => line.current?.setPointerCapture(event.pointerId)}
      onPointerMove={drag}
      onDoubleClick={() => size(plainPanels[field])}
      onKeyDown={press}
    />
  );
}
