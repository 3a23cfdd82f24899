import { useEffect, useRef, useState } from "react";
import type { Reply } from "../../../core/contract/contract.ts";
import { showFault } from "../../app/session.ts";
import { readSheet } from "../../app/sheetJobs.ts";
import { useSession } from "../../app/useSession.ts";
import type { PreviewSheet } from "../../app/viewStore.ts";
import { words } from "./words.ts";

/** One sheet as it will print; areas that lead to other sheets can be pressed. Paper stays white whatever the screen's colours. */
export function Paper(props: {
  readonly sheet: PreviewSheet;
  /** Size against the whole sheet in the window: 1 shows it whole. */
  readonly zoom: number;
  readonly onGo: (number: string) => void;
}) {
  const { zoom, onGo } = props;
  const shown = useRead(props.sheet);
  const drawn = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (!shown) return;
    // parsed as a picture, so that nothing in it can run
    const { documentElement } = new DOMParser().parseFromString(shown.svg, "image/svg+xml");
    const picture = document.importNode(documentElement, true);
    picture.removeAttribute("width");
    picture.removeAttribute("height");
    drawn.current?.replaceChildren(picture);
  }, [shown]);
  const { sheet, links } = shown ?? { sheet: props.sheet, links: [] };
  const { width, height } = sheet.sizeMm;
  return (
    <div className="paper">
      <div className="paper-sheet" style={{ width: `calc(min(100cqw, 100cqh * ${width / height}) * ${zoom})` }}>
        <div ref={drawn} role="img" aria-label={words.sheet(sheet.number, sheet.title)} />
        {links.map(({ boxMm: [left, bottom, wide, high], to }) => (
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

/** A sheet with what stands on it, the one before it until it is there. */
function useRead(sheet: PreviewSheet) {
  const session = useSession();
  const [read, setRead] = useState<(Reply<"draw.sheet"> & { readonly sheet: PreviewSheet }) | null>(null);
  useEffect(() => {
    let isWanted = true;
    void readSheet(session, sheet.number).then((reply) => {
      if (!isWanted) return;
      if (reply.ok) setRead({ ...reply.value, sheet });
      else showFault(session, reply.fault);
    });
    return () => {
      isWanted = false;
    };
  }, [session, sheet]);
  return read;
}
