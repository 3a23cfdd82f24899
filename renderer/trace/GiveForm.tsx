import { useState } from "react";
import type { FiberEnd } from "../../core/plant/fiberWay.ts";
import { formatLength } from "../../core/units/formatLength.ts";
import { parseLengthM } from "../../core/units/parseLength.ts";
import { runCommand } from "../app/edits.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { tell, unitsOf } from "../app/session.ts";
import { useSession } from "../app/useSession.ts";
import type { ShownTrace } from "./shownTrace.ts";
import { traceWords } from "./words.ts";

/** Asks which fiber a trace is of and how it was taken: what nobody has said stands open, nothing is guessed. */
export function GiveForm({ open, shown }: { readonly open: OpenRoute; readonly shown: ShownTrace }) {
  const session = useSession();
  const cables = [...open.route.cable.values()];
  const { trace } = shown;
  const isKnown = trace.cableId !== null && trace.fiber !== null;
  const [cableId, setCableId] = useState(trace.cableId ?? cables[0]?.id ?? "");
  const [fiber, setFiber] = useState(trace.fiber === null ? "" : String(trace.fiber));
  const [fromEnd, setFromEnd] = useState<FiberEnd | "">(isKnown ? trace.fromEnd : "");
  const [lead, setLead] = useState(trace.leadM === null ? "" : formatLength(trace.leadM, unitsOf(open), "span"));
  const send = (): void => {
    const parsed = lead.trim() === "" ? null : parseLengthM(lead, unitsOf(open));
    if (parsed && (!parsed.ok || parsed.valueM < 0)) {
      tell(session, traceWords.badLead);
      return;
    }
    const leadM = parsed?.ok ? parsed.valueM : null;
    void runCommand(session, "trace.give", {
      traceIds: [trace.id],
      cableId,
      fiber: Number(fiber),
      fromEnd,
      leadM,
    });
  };
  return (
    <form
      className="traces-give"
      onSubmit={(event) => {
        event.preventDefault();
        send();
      }}
    >
      {!isKnown && <h3>{traceWords.whose}</h3>}
      <p>{trace.fileName}</p>
      <label>
        <span>{traceWords.cable}</span>
        <select value={cableId} onChange={({ target }) => setCableId(target.value)}>
          {cables.map((one) => (
            <option key={one.id} value={one.id}>
              {one.name}
            </option>
          ))}
        </select>
      </label>
      <label>
        <span>{traceWords.fiber}</span>
        <input type="number" min={1} required value={fiber} onChange={({ target }) => setFiber(target.value)} />
      </label>
      <label>
        <span>{traceWords.end}</span>
        <select required value={fromEnd} onChange={({ target }) => setFromEnd(target.value as FiberEnd | "")}>
          <option value="" />
          <option value="feed">{traceWords.ends.feed}</option>
          <option value="far">{traceWords.ends.far}</option>
        </select>
      </label>
      <label>
        <span>{traceWords.lead}</span>
        <input value={lead} placeholder={traceWords.leadUnknown} onChange={({ target }) => setLead(target.value)} />
      </label>
      <button type="submit" className="act is-written">
        {traceWords.give}
      </button>
    </form>
  );
}
