import { useEffect, useRef } from "react";
import type { PreviewSheet } from "../../app/viewStore.ts";
import { words } from "./words.ts";

/** One sheet as it will print; areas that lead to other sheets can be pressed. Paper stays white whatever the screen's colours. */
export function Paper(props: {
  readonly sheet: PreviewSheet;
  /** Size against the whole sheet in the window: 1 shows it whole. */
  readonly zoom: number;
  readonly onGo: (number: string) => void;
}) {
  const { sheet, zoom, onGo } = props;
  const drawn = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // parsed as a picture, so that nothing in it can run
    const { documentElement } = new DOMParser().parseFromString(sheet.svg, "image/svg+xml");
    const picture = document.importNode(documentElement, true);
    picture.removeAttribute("width");
    picture.removeAttribute("height");
    drawn.current?.replaceChildren(picture);
  }, [sheet]);
  const { width, height } = sheet.sizeMm;
  return (
    <div className="paper">
      <div className="paper-sheet" style={{ width: `calc(min(100cqw, 100cqh * ${width / height}) * ${zoom})` }}>
        <div ref={drawn} role="img" aria-label={words.sheet(sheet.number, sheet.title)} />
        {sheet.links.map(({ boxMm: [left, bottom, wide, high], to }) => (
          <button
            key={`${to} ${left} ${bottom}`}
            type="button"
            className="sheet-link"
            title={words.leads(to)}
            aria-label={words.leads(to)}
            style={{
              left: `${(left / width) * 100}%`,
              bottom: `${(bottom / height) * 100}%`,
              width: `${(wide / width) * 100}%`,
              height: `${(high / height) * 100}%`,
            }}
            onClick={() => onGo(to)}
          />
        ))}
      </div>
    </div>
  );
}
