import { Maximize, Trash2, Upload, X } from "lucide-react";
import { actionOf, perform } from "../app/actions.ts";
import { runCommand } from "../app/edits.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
import { setCloseout } from "../closeout/closeoutHand.ts";
import { FileButton } from "../panels/FileButton.tsx";
import { bringTraces } from "./bringTraces.ts";
import { TracePaper } from "./TracePaper.tsx";
import { setTraces, traceNow, tracesInOrder } from "./traceHand.ts";
import { traceTitle } from "./traceTitle.ts";
import { untoldTraces } from "./untold.ts";
import { traceWords } from "./words.ts";

/** The traces: which one, with what, and what it shows. */
export function TracePanel({ open }: { readonly open: OpenRoute }) {
  const session = useSession();
  const traceId = useView((state) => state.traces.traceId);
  const areOthersShown = useView((state) => state.traces.areOthersShown);
  const by = useView((state) => state.closeout.by);
  const shown = traceNow(open, traceId);
  const untold = untoldTraces(open.route);
  const [firstUntold] = untold;
  return (
    <>
      <div className="traces-bar">
        {shown && (
          <label>
            <span>{traceWords.trace}</span>
            <select
              value={shown.trace.id}
              onChange={({ target }) => setTraces(session, { traceId: target.value, a: null, b: null, underM: null })}
            >
              {tracesInOrder(open).map((id) => (
                <option key={id} value={id}>
                  {traceTitle(open.plant, id)}
                </option>
              ))}
            </select>
          </label>
        )}
        {shown && (
          <label>
            <input
              type="checkbox"
              checked={areOthersShown}
              onChange={({ target }) => setTraces(session, { areOthersShown: target.checked })}
            />
            <span>{traceWords.others}</span>
          </label>
        )}
        {firstUntold && (
          <button
            type="button"
            className="act is-written"
            onClick={() => setTraces(session, { traceId: firstUntold.id, a: null, b: null, underM: null })}
          >
            {traceWords.untold(untold.length)}
          </button>
        )}
        <span className="traces-bar-room" />
        <label>
          <span>{traceWords.by}</span>
          <input value={by} onChange={({ target }) => setCloseout(session, { by: target.value })} />
        </label>
        <BringButton />
        {shown && (
          <button
            type="button"
            className="act"
            aria-label={traceWords.remove}
            title={traceWords.remove}
            onClick={() => void runCommand(session, "trace.remove", { traceIds: [shown.trace.id] })}
          >
            <Trash2 size={16} aria-hidden="true" />
          </button>
        )}
        {shown && (
          <button
            type="button"
            className="act"
            aria-label={traceWords.fit}
            title={traceWords.fit}
            onClick={() => setTraces(session, { isFitWanted: true })}
          >
            <Maximize size={16} aria-hidden="true" />
          </button>
        )}
        <button
          type="button"
          className="act"
          aria-label={traceWords.hide}
          title={traceWords.hide}
          onClick={() => void perform(session, actionOf("traces"))}
        >
          <X size={16} aria-hidden="true" />
        </button>
      </div>
      {shown ? <TracePaper open={open} shown={shown} /> : <p className="empty">{traceWords.none}</p>}
    </>
  );
}

function BringButton() {
  const session = useSession();
  return (
    <FileButton
      label={traceWords.bring}
      className="act is-written"
      accept=".sor"
      isMany
      onFiles={(files) => void bringTraces(session, files)}
    >
      <Upload size={16} aria-hidden="true" />
      <span>{traceWords.bring}</span>
    </FileButton>
  );
}
