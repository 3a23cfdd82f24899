import { useEffect, useMemo, useState } from "react";
import type { Measure } from "./labelWishes.ts";
import { openMeasure } from "./measureText.ts";

/** Measures text with the page's own font; another measure once the font has come in, as widths before that are wrong. */
export function useMeasure(): Measure {
  const [fontCount, setFontCount] = useState(0);
  useEffect(() => {
    let isHere = true;
    void document.fonts.ready.then(() => isHere && setFontCount((count) => count + 1));
    return () => {
      isHere = false;
    };
  }, []);
  return useMemo(() => openMeasure(fontCount), [fontCount]);
}
