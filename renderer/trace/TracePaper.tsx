import { useEffect, useMemo, useRef } from "react";
import { formatLength } from "../../core/units/formatLength.ts";
import { formatLossDb } from "../../core/units/formatLossDb.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { useSession, useView } from "../app/useSession.ts";
import { useInk } from "../canvas/usePicture.ts";
import { type LaidCurve, levelAt } from "./curveColumns.ts";
import type { TraceMark } from "./drawTrace.ts";
import { GiveForm } from "./GiveForm.tsx";
import { GiveManyForm } from "./GiveManyForm.tsx";
import { useKeptTraces } from "./keptCurves.ts";
import { lineTitle } from "./lineTitle.ts";
import { extentOf, laidCurve, type ShownTrace, shownTraces, type TraceLine, traceLines } from "./shownTrace.ts";
import { TraceEvents } from "./TraceEvents.tsx";
import { TraceStage } from "./TraceStage.tsx";
import { fitTrace, type TraceExtent, traceFrameWith } from "./traceFrame.ts";
import { hubMOfRef, lineOfRef, refOfLine, setTraces } from "./traceHand.ts";
import { pressOnTrace } from "./traceKeys.ts";
import { untoldTraces } from "./untold.ts";
import { useTracePointer } from "./useTracePointer.ts";
import { traceWords } from "./words.ts";

type Props = { readonly open: OpenRoute; readonly shown: ShownTrace };

/** The drawing of a trace with its list beside it. */
export function TracePaper({ open, shown }: Props) {
  const session = useSession();
  const paper = useRef<HTMLDivElement>(null);
  const { plant } = open;
  const areOthersShown = useView((state) => state.traces.areOthersShown);
  const selection = useView((state) => state.selection);
  const frame = useView((state) => state.traces.frame);
  const all = useMemo(() => shownTraces(plant, shown.trace.id, areOthersShown), [plant, shown, areOthersShown]);
  const files = useKeptTraces(
    open.routeId,
    all.map((one) => one.trace.keptHash),
  );
  const own = files.get(shown.trace.keptHash);
  const fileKey = [...files.keys()].join(" ");
  // biome-ignore lint/correctness/useExhaustiveDependencies: files are known by their hashes
  const curves = useMemo(
    () =>
      all.flatMap((one) => {
        const file = files.get(one.trace.keptHash);
        return (file && laidCurve(one, file)) ?? [];
      }),
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- files are known by their hashes
    [all, fileKey],
  );
  const lines = useMemo(() => traceLines(plant, shown), [plant, shown]);
  const extent = useMemo(() => extentOf(all, curves, plant), [all, curves, plant]);
  const chosen = selection.at(-1);
  const chosenLine = useMemo(
    () => (chosen === undefined ? null : lineOfRef(plant, shown, chosen)),
    [plant, shown, chosen],
  );
  const marks = useMemo(
    () => lines.map((one) => markOf(open, shown, one, one.key === chosenLine?.key)),
    [lines, open, shown, chosenLine],
  );
  const ink = useInk();
  const units = unitsOf(open);
  const look = useMemo(() => ({ frame, ink, units }), [frame, ink, units]);
  usePaperSize(paper, extent, shown.trace.id);
  useTracePointer(paper, shown);
  useFollowedSelection(open, shown);
  return (
    <div className="traces-room">
      <div className="traces-paper" ref={paper}>
        <div
          className="traces-hand"
          data-trace
          role="application"
          aria-roledescription="trace"
          aria-label={traceWords.hand}
          // biome-ignore lint/a11y/noNoninteractiveTabindex: a drawing one walks by arrow keys takes the focus
          tabIndex={0}
          onKeyDown={(event) => pressOnTrace(session, shown, extent, event)}
        >
          <TraceStage look={look} curves={curves} marks={marks} />
        </div>
        <Reading curve={curves[0]} open={open} />
        {!own && <p className="traces-note">{traceWords.waiting}</p>}
        {own && curves.length === 0 && <p className="traces-note">{traceWords.noCurve}</p>}
      </div>
      <div className="traces-side">
        <Whose open={open} shown={shown} />
        <p className="traces-told">
          {traceWords.told(shown.trace.by, shown.trace.atIso.slice(0, 10), own?.general?.operator ?? "")}
        </p>
        {own && own.damages.length > 0 && (
          <section className="traces-damages">
            <h3>{traceWords.damaged}</h3>
            <ul>
              {own.damages.map((one) => (
                <li key={`${one.block} ${one.what}`}>
                  {one.block}: {one.what}
                </li>
              ))}
            </ul>
          </section>
        )}
        <TraceEvents open={open} shown={shown} lines={lines} chosenKey={chosenLine?.key ?? null} />
      </div>
    </div>
  );
}

/** Whose a trace is: asked at once where nobody has said so, with all of which nobody has; else behind a word. */
function Whose({ open, shown }: Props) {
  const { id, cableId, fiber, fromEnd, leadM } = shown.trace;
  const form = <GiveForm key={[id, cableId, fiber, fromEnd, leadM].join(" ")} open={open} shown={shown} />;
  if (cableId === null || fiber === null)
    return untoldTraces(open.route).length > 1 ? <GiveManyForm open={open} shownId={id} /> : form;
  return (
    <details className="traces-whose">
      <summary>{traceWords.whoseKnown}</summary>
      {form}
    </details>
  );
}

function markOf(open: OpenRoute, shown: ShownTrace, one: TraceLine, isChosen: boolean): TraceMark {
  const signs = {
    untold: "seen",
    matched: one.event ? "seen" : "unseen",
    missing: "unseen",
    beyond: "unseen",
    unmatched: "unmatched",
    break: "broken",
    lead: "lead",
  } as const;
  const name = one.kind === "lead" ? "" : lineTitle(open.plant, shown, one);
  return { hubM: one.hubM, name, sign: signs[one.kind], isChosen };
}

/** What is read at the marks and between them. */
function Reading({ curve, open }: { readonly curve: LaidCurve | undefined; readonly open: OpenRoute }) {
  const { a, b } = useView((state) => state.traces);
  const units = unitsOf(open);
  const level = (atM: number) => (curve ? levelAt(curve, atM) : null);
  const told = (name: "a" | "b", atM: number | null) => {
    if (atM === null) return [];
    const levelDb = level(atM);
    return [
      traceWords.at(
        traceWords.mark(name),
        formatLength(atM, units, "span"),
        levelDb === null ? "-" : formatLossDb(levelDb),
      ),
    ];
  };
  const [levelA, levelB] = [a === null ? null : level(a), b === null ? null : level(b)];
  const between =
    a !== null && b !== null && levelA !== null && levelB !== null
      ? [traceWords.between(formatLength(Math.abs(b - a), units, "span"), formatLossDb(Math.abs(levelA - levelB)))]
      : [];
  const all = [...told("a", a), ...told("b", b), ...between];
  if (all.length === 0) return null;
  return (
    <output className="traces-reading">
      {all.map((one) => (
        <span key={one}>{one}</span>
      ))}
    </output>
  );
}

/** Keeps the frame as large as its place; shows the trace whole when it comes in, when its curve does, and when asked to. */
function usePaperSize(paper: React.RefObject<HTMLElement | null>, extent: TraceExtent, traceId: string): void {
  const session = useSession();
  const isFitWanted = useView((state) => state.traces.isFitWanted);
  const sized = useRef({ widthPx: 0, heightPx: 0 });
  const { fromM, toM, topDb, bottomDb } = extent;
  useEffect(() => {
    const element = paper.current;
    if (!element) return undefined;
    const observer = new ResizeObserver(() => {
      const { clientWidth: widthPx, clientHeight: heightPx } = element;
      const isFirst = sized.current.widthPx === 0;
      sized.current = { widthPx, heightPx };
      const frame = { ...session.view.getState().traces.frame, widthPx, heightPx };
      setTraces(session, isFirst ? { frame, isFitWanted: true } : { frame });
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [paper, session]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another trace, or another extent of it, is shown whole
  useEffect(() => {
    setTraces(session, { isFitWanted: true });
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- another trace, or another extent of it, is shown whole
  }, [session, traceId, fromM, toM, topDb, bottomDb]);
  useEffect(() => {
    const { frame } = session.view.getState().traces;
    if (!isFitWanted || frame.widthPx === 0) return;
    setTraces(session, { isFitWanted: false, frame: fitTrace(frame, { fromM, toM, topDb, bottomDb }) });
  }, [session, isFitWanted, fromM, toM, topDb, bottomDb]);
}

/** What is chosen on the diagram is brought into sight here. */
function useFollowedSelection({ plant }: OpenRoute, shown: ShownTrace): void {
  const session = useSession();
  const chosen = useView((state) => state.selection.at(-1));
  useEffect(() => {
    if (chosen === undefined) return;
    const line = lineOfRef(plant, shown, chosen);
    const { frame, held, ...marks } = session.view.getState().traces;
    const held0 = marks[held];
    // what was chosen here is where the mark is already
    if (line && held0 !== null && refOfLine(plant, shown, line) === chosen && Math.abs(held0 - line.hubM) < 1e-6)
      return;
    const atM = line?.hubM ?? hubMOfRef(plant, shown, chosen);
    if (atM !== null) setTraces(session, { [held]: atM, frame: traceFrameWith(frame, atM) });
  }, [plant, chosen, session, shown]);
}
