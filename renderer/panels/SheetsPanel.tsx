import { useEffect, useRef, useState } from "react";
import { useSession } from "../app/useSession.ts";
import type { PreviewSheet } from "../app/viewStore.ts";

/** The drawing set as it will print: one sheet large, the list beside it. Paper stays white whatever the screen's colours. */
export function SheetsPanel({ sheets }: { readonly sheets: readonly PreviewSheet[] }) {
  const { view } = useSession();
  const [position, setPosition] = useState(0);
  const sheet = sheets[Math.min(position, sheets.length - 1)];
  const turn = (step: number): void => setPosition((now) => Math.min(sheets.length - 1, Math.max(0, now + step)));
  if (!sheet) return <p className="quiet empty">The set has no sheets yet. Import poles, then lay out terminals.</p>;
  return (
    <div className="sheets">
      <nav aria-label="Sheets">
        <ol>
          {sheets.map((one, i) => (
            <li key={one.number}>
              <button type="button" aria-current={i === position} onClick={() => setPosition(i)}>
                <b>{one.number}</b> {one.title}
              </button>
            </li>
          ))}
        </ol>
      </nav>
      <div className="sheet-side">
        <Paper sheet={sheet} />
        <div className="sheet-turn">
          <button type="button" className="fix" disabled={position === 0} onClick={() => turn(-1)}>
            Previous sheet
          </button>
          <span>
            Sheet {position + 1} of {sheets.length}
          </span>
          <button type="button" className="fix" disabled={position >= sheets.length - 1} onClick={() => turn(1)}>
            Next sheet
          </button>
          <button type="button" className="fix" onClick={() => view.setState({ sheets: null })}>
            Back to the diagram
          </button>
        </div>
      </div>
    </div>
  );
}

function Paper({ sheet }: { readonly sheet: PreviewSheet }) {
  const paper = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // parsed as a picture, so that nothing in it can run
    const { documentElement } = new DOMParser().parseFromString(sheet.svg, "image/svg+xml");
    const picture = document.importNode(documentElement, true);
    const [, , width = 17, height = 11] = (picture.getAttribute("viewBox") ?? "").split(" ").map(Number);
    picture.removeAttribute("width");
    picture.removeAttribute("height");
    paper.current?.style.setProperty("--width-over-height", String(width / height));
    paper.current?.replaceChildren(picture);
  }, [sheet]);
  return <div className="paper" ref={paper} role="img" aria-label={`Sheet ${sheet.number}, ${sheet.title}`} />;
}
