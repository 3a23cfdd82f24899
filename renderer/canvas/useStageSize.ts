import { type RefObject, useEffect } from "react";
import { useSession } from "../app/useSession.ts";

/** Keeps the view as large as its place on the page; what is at the upper left stays there while panels come and go. */
export function useStageSize(ground: RefObject<HTMLElement | null>): void {
  const { view } = useSession();
  useEffect(() => {
    const element = ground.current;
    if (!element) return;
    const observer = new ResizeObserver(() => {
      const { clientWidth, clientHeight } = element;
      view.setState(({ viewport }) => {
        const { widthPx, heightPx, pxPerM } = viewport;
        const isFirst = widthPx === 0;
        return {
          viewport: {
            ...viewport,
            widthPx: clientWidth,
            heightPx: clientHeight,
            centreEastM: viewport.centreEastM + (isFirst ? 0 : (clientWidth - widthPx) / 2 / pxPerM),
            centreNorthM: viewport.centreNorthM - (isFirst ? 0 : (clientHeight - heightPx) / 2 / pxPerM),
          },
        };
      });
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [ground, view]);
}
