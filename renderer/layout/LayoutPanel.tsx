import { useMemo } from "react";
import { standingRecord } from "../../core/plant/layoutStanding.ts";
import { endingText } from "../../core/plant/layoutWords.ts";
import { capital } from "../../core/units/capital.ts";
import { gapText } from "../../core/units/gapText.ts";
import { moneyText } from "../../core/units/moneyText.ts";
import { actionOf } from "../app/actions.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
import { ActionButton } from "../panels/Bar.tsx";
import { EmptyState } from "../panels/EmptyState.tsx";
import { Facts } from "../panels/Facts.tsx";
import { DecidedLegend } from "./DecidedLegend.tsx";
import { UnservedList } from "./UnservedList.tsx";
import { layoutWords as words } from "./words.ts";

/** How the latest layout came out, how far from the cheapest it may be, and whom it could not serve. */
export function LayoutPanel({ open }: { readonly open: OpenRoute }) {
  const session = useSession();
  const record = open.route.layoutRecord.get("layout");
  return (
    <aside className="side layout" aria-label={words.title}>
      <header>
        <h2>{words.title}</h2>
        <button type="button" className="fix" onClick={() => session.view.setState({ sideRoom: null })}>
          {words.close}
        </button>
      </header>
      {record ? <CameOut open={open} /> : <EmptyState says={words.none} />}
      <Again />
      {(record || open.route.unservedUnit.size > 0) && <UnservedList open={open} />}
      <p className="layout-again">
        <ActionButton action={{ ...actionOf("whatIf"), isWritten: true }} />
      </p>
      <DecidedLegend open={open} />
    </aside>
  );
}

function CameOut({ open: { route } }: { readonly open: OpenRoute }) {
  const standing = useMemo(() => standingRecord(route), [route]);
  const record = route.layoutRecord.get("layout");
  if (!record) return null;
  const { terminalCount, servedCount, unservedCount, cost, bound, ended } = record;
  return (
    <>
      <h3>{words.latest}</h3>
      {!standing && <p className="problem">{words.stale}</p>}
      <div className={standing ? undefined : "is-stale"}>
        <Facts
          facts={[
            [words.terminals, terminalCount],
            [words.served, words.servedOf(servedCount, servedCount + unservedCount)],
            [
              words.cost,
              <span key="cost" className="figure" title={words.costWhy}>
                {moneyText(cost)}
              </span>,
            ],
            [words.bound, bound === null ? words.noBound : moneyText(bound)],
            [words.gap, bound === null ? null : gapText(cost, bound)],
          ]}
        />
        <p className="quiet">{capital(endingText(ended))}</p>
      </div>
    </>
  );
}

function Again() {
  const session = useSession();
  const seconds = useView((state) => state.layoutTimeS);
  return (
    <div className="layout-again">
      <ActionButton action={{ ...actionOf("layout"), isWritten: true }} />
      <label title={words.timeWhy}>
        <span>{words.timeLimit}</span>
        <input
          type="number"
          min={1}
          step={1}
          placeholder={words.asUsual}
          value={seconds ?? ""}
          onChange={(event) => {
            const asked = event.target.valueAsNumber;
            session.view.setState({ layoutTimeS: asked > 0 ? asked : null });
          }}
        />
      </label>
    </div>
  );
}
