import { memo } from "react";
import { meanLossDb } from "../../core/closeout/traceLimits.ts";
import { tracedPlaces } from "../../core/closeout/tracePlaces.ts";
import type { Severity } from "../../core/rules/rule.ts";
import { metresPerFoot } from "../../core/units/constants.ts";
import { fixedText } from "../../core/units/fixedText.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { useSession } from "../app/useSession.ts";
import { FindingGlyph } from "../panels/FindingGlyph.tsx";
import { linePlace, lineTitle } from "./lineTitle.ts";
import type { ShownTrace, TraceLine } from "./shownTrace.ts";
import { chooseLine } from "./traceHand.ts";
import { traceWords } from "./words.ts";

type Props = {
  readonly open: OpenRoute;
  readonly shown: ShownTrace;
  readonly lines: readonly TraceLine[];
  readonly chosenKey: string | null;
};

/** The events of a trace with what is drawn there; a click chooses the place on the diagram. */
export const TraceEvents = memo(function TraceEvents({ open, shown, lines, chosenKey }: Props) {
  const session = useSession();
  const units = unitsOf(open);
  const unit = units === "us" ? "ft" : "m";
  const { columns } = traceWords;
  const length = (m: number) => fixedText(units === "us" ? m / metresPerFoot : m, units === "us" ? 0 : 1);
  const means = new Map(
    tracedPlaces(open.plant, shown.trace.id)
      .filter((one) => one.lossesDb.length === 2)
      .map((one) => [one.event.id, meanLossDb(one.lossesDb)]),
  );
  const severities = severitiesBySubject(open);
  return (
    <table className="traces-events">
      <caption className="only-heard">{traceWords.events}</caption>
      <thead>
        <tr>
          <th scope="col">{columns.at(unit)}</th>
          <th scope="col">{columns.what}</th>
          <th scope="col">{columns.more(unit)}</th>
          <th scope="col">{columns.loss}</th>
          {means.size > 0 && <th scope="col">{columns.mean}</th>}
          <th scope="col">{columns.reflectance}</th>
          <th scope="col">{columns.slope}</th>
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => {
          const { key, hubM, event, moreM } = line;
          const mean = event ? means.get(event.id) : undefined;
          const place = linePlace(open.plant, shown, line);
          const severity = event ? severities.get(event.id) : undefined;
          return (
            <tr key={key} aria-current={key === chosenKey} data-event={event?.number ?? ""}>
              <td>{length(hubM)}</td>
              <td>
                <button type="button" className="link" onClick={() => chooseLine(session, shown, line)}>
                  {severity && <FindingGlyph severity={severity} />}
                  {lineTitle(open.plant, shown, line)}
                </button>
                {place && <div className="traces-place">{place}</div>}
              </td>
              <td>{moreM === null ? "" : length(moreM)}</td>
              <td>{event && !event.ends ? fixedText(event.lossDb, 2) : ""}</td>
              {means.size > 0 && <td>{mean === undefined ? "" : fixedText(mean, 2)}</td>}
              <td>{event?.reflectanceDb ? fixedText(event.reflectanceDb, 1) : ""}</td>
              <td>{event && event.slopeDbPerKm !== 0 ? fixedText(event.slopeDbPerKm, 3) : ""}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
});

/** The worst that is found at an event, by the event's id. */
function severitiesBySubject({ findings }: OpenRoute): ReadonlyMap<string, Severity> {
  const worst = new Map<string, Severity>();
  const rank = { error: 0, warning: 1, note: 2 } as const;
  for (const { subjects, severity, waiverId } of findings.values())
    for (const { table, id } of waiverId === null ? subjects : [])
      if (table === "traceEvent" && rank[severity] <= rank[worst.get(id) ?? "note"]) worst.set(id, severity);
  return worst;
}
