import { useId } from "react";
import type { OpenRoute } from "../../app/routeStore.ts";
import { previewSheets } from "../../app/sheetJobs.ts";
import { useSession, useView } from "../../app/useSession.ts";
import type { PreviewSheet } from "../../app/viewStore.ts";
import { DrawnOn } from "./DrawnOn.tsx";
import { words } from "./words.ts";

/** Which state of the route the sheets show and what on, and the way to another; says so where the route was edited since. */
export function DrawnFrom(props: {
  readonly open: OpenRoute;
  readonly sheets: readonly PreviewSheet[];
  /** Number of the sheet shown, which stays in view. */
  readonly current: string;
}) {
  const { open, sheets, current } = props;
  const session = useSession();
  const id = useId();
  const sheetsOf = useView((state) => state.sheetsOf);
  const isBusy = useView((state) => state.job !== null);
  if (!sheetsOf) return null;
  const { route, revision, revisionId, paper, isWhole } = sheetsOf;
  const revisions = [...open.route.revision.values()].sort((a, b) => b.number - a.number);
  const isStale = revisionId === null && route !== open.route;
  const drawAnew = async (): Promise<void> => {
    await previewSheets(session, { revisionId, paper });
    session.view.setState({ sheetWanted: current });
  };
  const button = (name: string) => (
    <button type="button" className="fix" disabled={isBusy} onClick={() => void drawAnew()}>
      {name}
    </button>
  );
  return (
    <div className="drawn-from">
      {revisions.length > 0 && isWhole && (
        <>
          <label htmlFor={`${id}-state`}>{words.state}</label>
          <select
            id={`${id}-state`}
            value={revisionId ?? ""}
            disabled={isBusy}
            onChange={(event) =>
              void previewSheets(session, { revisionId: event.target.value === "" ? null : event.target.value, paper })
            }
          >
            <option value="">{words.asItStands}</option>
            {revisions.map((one) => (
              <option key={one.id} value={one.id}>
                {words.issued(one.letter, one.dateIso)}
              </option>
            ))}
          </select>
        </>
      )}
      <p className="quiet">{revision}</p>
      {isWhole && <DrawnOn drawn={sheetsOf} sheets={sheets} current={current} />}
      {isStale && <p role="status">{words.stale}</p>}
      {isStale && button(words.again)}
      {!isWhole && !isStale && button(words.whole)}
    </div>
  );
}
