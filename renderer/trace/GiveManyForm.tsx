import { ListOrdered } from "lucide-react";
import { useMemo, useState } from "react";
import type { KeptTrace } from "../../core/model/tables.ts";
import type { FiberEnd } from "../../core/plant/fiberWay.ts";
import { runCommand } from "../app/edits.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession } from "../app/useSession.ts";
import type { ViewState } from "../app/viewStore.ts";
import { setTraces } from "./traceHand.ts";
import {
  type AllTold,
  fiberCount,
  givingSteps,
  isToldWhole,
  numberedOn,
  type Told,
  toldOf,
  untoldTraces,
} from "./untold.ts";
import { traceWords } from "./words.ts";

type Props = { readonly open: OpenRoute; readonly shownId: string };

/** Asks which fibers many traces are of, and says all that is known of them as one step. */
export function GiveManyForm({ open, shownId }: Props) {
  const session = useSession();
  const { route } = open;
  const traces = useMemo(() => untoldTraces(route), [route]);
  const [told, setTold] = useState<AllTold>(new Map());
  const steps = givingSteps(traces, told);
  const send = (): void => {
    const left = traces.find((one) => !isToldWhole(toldOf(told, one)));
    const view = ({ traces: now }: ViewState) => ({ traces: { ...now, traceId: left?.id ?? now.traceId } });
    void runCommand(session, "steps.run", { label: traceWords.gaveMany(steps.length), steps }, { view });
  };
  return (
    <form
      className="traces-give-many"
      aria-label={traceWords.whoseMany}
      onSubmit={(event) => {
        event.preventDefault();
        if (steps.length > 0) send();
      }}
    >
      <h3>{traceWords.whoseMany}</h3>
      <table>
        <thead>
          <tr>
            <th>{traceWords.file}</th>
            <th>{traceWords.cable}</th>
            <th>{traceWords.fiber}</th>
            <th>{traceWords.end}</th>
            <th aria-label={traceWords.numberOn} />
          </tr>
        </thead>
        <tbody>
          {traces.map((trace) => (
            <TraceRow
              key={trace.id}
              open={open}
              trace={trace}
              told={toldOf(told, trace)}
              isShown={trace.id === shownId}
              onTold={(change) => setTold((now) => new Map(now).set(trace.id, { ...toldOf(now, trace), ...change }))}
              onNumberOn={() => setTold((now) => numberedOn(route, traces, now, trace))}
            />
          ))}
        </tbody>
      </table>
      <button type="submit" className="act is-written" disabled={steps.length === 0}>
        {traceWords.giveMany(steps.length)}
      </button>
    </form>
  );
}

type RowProps = {
  readonly open: OpenRoute;
  readonly trace: KeptTrace;
  readonly told: Told;
  readonly isShown: boolean;
  readonly onTold: (change: Partial<Told>) => void;
  readonly onNumberOn: () => void;
};

/** One trace: a number written asks for the cable and the end with it; the file's name shows its curve. */
function TraceRow({ open: { route }, trace, told, isShown, onTold, onNumberOn }: RowProps) {
  const session = useSession();
  const { fileName } = trace;
  const isBegun = told.fiber !== "";
  const named = (what: string) => `${what}, ${fileName}`;
  return (
    <tr aria-current={isShown}>
      <td>
        <button
          type="button"
          className="traces-file"
          title={fileName}
          onClick={() => setTraces(session, { traceId: trace.id, a: null, b: null, underM: null })}
        >
          {fileName}
        </button>
        <span className="traces-place">{Math.round(trace.wavelengthNm)} nm</span>
      </td>
      <td>
        <select
          aria-label={named(traceWords.cable)}
          required={isBegun}
          value={told.cableId}
          onChange={({ target }) => onTold({ cableId: target.value })}
        >
          <option value="" />
          {[...route.cable.values()].map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </td>
      <td>
        <input
          type="number"
          aria-label={named(traceWords.fiber)}
          min={1}
          max={told.cableId === "" ? undefined : fiberCount(route, told.cableId)}
          value={told.fiber}
          onChange={({ target }) => onTold({ fiber: target.value })}
        />
      </td>
      <td>
        <select
          aria-label={named(traceWords.end)}
          required={isBegun}
          value={told.fromEnd}
          onChange={({ target }) => onTold({ fromEnd: target.value as FiberEnd | "" })}
        >
          <option value="" />
          <option value="feed">{traceWords.ends.feed}</option>
          <option value="far">{traceWords.ends.far}</option>
        </select>
      </td>
      <td>
        <button
          type="button"
          className="act"
          aria-label={traceWords.numberOnFrom(fileName)}
          title={traceWords.numberOnTold}
          disabled={!isToldWhole(told)}
          onClick={onNumberOn}
        >
          <ListOrdered size={16} aria-hidden="true" />
        </button>
      </td>
    </tr>
  );
}
