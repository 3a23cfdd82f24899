import { useEffect, useRef, useState } from "react";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
import type { PreviewSheet } from "../app/viewStore.ts";
import { DrawnFrom } from "./sheets/DrawnFrom.tsx";
import { DrawSome } from "./sheets/DrawSome.tsx";
import { Paper } from "./sheets/Paper.tsx";
import { words } from "./sheets/words.ts";

const zoomStep = 1.25;
const mostZoom = 8;

/** The drawing set as it will print: one sheet large, the list beside it. */
export function SheetsPanel(props: { readonly open: OpenRoute; readonly sheets: readonly PreviewSheet[] }) {
  const { open, sheets } = props;
  const [position, setPosition] = useState(0);
  const [zoom, setZoom] = useState(1);
  const { view } = useSession();
  const wanted = useView((state) => state.sheetWanted);
  useEffect(() => {
    if (wanted === null) return;
    // oxlint-disable-next-line react/set-state-in-effect -- a jump asked for elsewhere is taken up once
    setPosition(
      Math.max(
        0,
        sheets.findIndex((one) => one.number === wanted),
      ),
    );
    view.setState({ sheetWanted: null });
  }, [wanted, sheets, view]);
  const sheet = sheets[Math.min(position, sheets.length - 1)];
  const go = (to: number): void => setPosition(Math.min(sheets.length - 1, Math.max(0, to)));
  if (!sheet) return <p className="quiet empty">{words.empty}</p>;
  return (
    <section
      className="sheets"
      aria-label={words.list}
      onKeyDown={(event) => {
        if (event.target instanceof Element && event.target.closest("input, select")) return;
        if (event.key === "PageDown") go(position + 1);
        if (event.key === "PageUp") go(position - 1);
        if (event.key === "+" || event.key === "=") setZoom(Math.min(mostZoom, zoom * zoomStep));
        if (event.key === "-") setZoom(Math.max(1, zoom / zoomStep));
        if (event.key === "0") setZoom(1);
      }}
    >
      <Index open={open} sheets={sheets} position={position} onGo={go} />
      <div className="sheet-side">
        <Paper sheet={sheet} zoom={zoom} onGo={(number) => go(sheets.findIndex((one) => one.number === number))} />
        <Turn position={position} count={sheets.length} zoom={zoom} onGo={go} onZoom={setZoom} />
        <DrawSome sheets={sheets} current={sheet.number} />
      </div>
    </section>
  );
}

function Index(props: {
  readonly open: OpenRoute;
  readonly sheets: readonly PreviewSheet[];
  readonly position: number;
  readonly onGo: (position: number) => void;
}) {
  const { open, sheets, position, onGo } = props;
  const { view } = useSession();
  const list = useRef<HTMLOListElement>(null);
  useEffect(() => {
    list.current?.children[position]?.scrollIntoView({ block: "nearest" });
  }, [position]);
  return (
    <nav aria-label={words.list}>
      <button type="button" className="fix" onClick={() => view.setState({ sheets: null })}>
        {words.back}
      </button>
      <DrawnFrom open={open} sheets={sheets} current={sheets[position]?.number ?? ""} />
      <ol ref={list}>
        {sheets.map((one, i) => (
          <li key={one.number}>
            <button type="button" aria-current={i === position} onClick={() => onGo(i)}>
              <b>{one.number}</b> {one.title}
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
}

function Turn(props: {
  readonly position: number;
  readonly count: number;
  readonly zoom: number;
  readonly onGo: (position: number) => void;
  readonly onZoom: (zoom: number) => void;
}) {
  const { position, count, zoom, onGo, onZoom } = props;
  const button = (name: string, isOff: boolean, run: () => void) => (
    <button type="button" className="fix" disabled={isOff} onClick={run}>
      {name}
    </button>
  );
  return (
    <div className="sheet-turn">
      {button(words.previous, position === 0, () => onGo(position - 1))}
      <label>
        {words.jump}{" "}
        <input
          type="number"
          min={1}
          max={count}
          value={position + 1}
          onChange={(event) => onGo(event.target.valueAsNumber - 1 || 0)}
        />
      </label>
      <span>{words.place(position + 1, count)}</span>
      {button(words.next, position >= count - 1, () => onGo(position + 1))}
      {button(words.zoomOut, zoom <= 1, () => onZoom(Math.max(1, zoom / zoomStep)))}
      {button(words.zoomIn, zoom >= mostZoom, () => onZoom(Math.min(mostZoom, zoom * zoomStep)))}
      {button(words.fit, zoom === 1, () => onZoom(1))}
    </div>
  );
}
