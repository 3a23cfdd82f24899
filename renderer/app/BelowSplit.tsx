import { type KeyboardEvent, type PointerEvent, type ReactNode, useRef } from "react";

const [leastFrac, mostFrac, stepFrac] = [0.2, 0.85, 0.04];

type Props = {
  /** Class of the panel below, and what it is called. */
  readonly className: string;
  readonly label: string;
  readonly dividerLabel: string;
  readonly isShown: boolean;
  /** Part of the height the panel takes. */
  readonly sizeFrac: number;
  readonly size: (frac: number) => void;
  readonly panel: ReactNode;
  readonly children: ReactNode;
};

/** What fills the middle with a panel below it, and the divider between. */
export function BelowSplit({
  className,
  label,
  dividerLabel,
  isShown,
  sizeFrac: wantedFrac,
  size,
  panel,
  children,
}: Props) {
  const area = useRef<HTMLDivElement>(null);
  const sizeFrac = bounded(wantedFrac);
  const drag = (event: PointerEvent): void => {
    const box = area.current?.getBoundingClientRect();
    if (box && event.currentTarget.hasPointerCapture(event.pointerId))
      size(bounded((box.bottom - event.clientY) / box.height));
  };
  const press = (event: KeyboardEvent): void => {
    if (event.key !== "ArrowUp" && event.key !== "ArrowDown") return;
    event.preventDefault();
    size(bounded(sizeFrac + (event.key === "ArrowUp" ? stepFrac : -stepFrac)));
  };
  return (
    <div ref={area} className="below-split">
      {children}
      {isShown && (
        <>
          <hr
            className="divider"
            tabIndex={0}
            aria-label={dividerLabel}
            aria-orientation="horizontal"
            aria-valuenow={Math.round(sizeFrac * 100)}
            title={dividerLabel}
            onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
            onPointerMove={drag}
            onKeyDown={press}
          />
          <section
            className={`below-panel ${className}`}
            aria-label={label}
            style={{ flexBasis: `${sizeFrac * 100}%` }}
          >
            {panel}
          </section>
        </>
      )}
    </div>
  );
}

function bounded(frac: number): number {
  return Number.isFinite(frac) ? Math.max(leastFrac, Math.min(mostFrac, frac)) : 0.5;
}
