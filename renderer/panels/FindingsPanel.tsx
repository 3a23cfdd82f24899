import { type KeyboardEvent, useState } from "react";
import type { Severity } from "../../core/rules/rule.ts";
import type { OpenRoute, WindowFinding } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
import { FindingGlyph } from "./FindingGlyph.tsx";
import { FindingRow } from "./FindingRow.tsx";

const severities: readonly Severity[] = ["error", "warning", "note"];
const rank = { error: 0, warning: 1, note: 2 } as const;
const pageCount = 150;

/** What is wrong, along the lower edge: counts that filter, rows that lead to the place and mend. */
export function FindingsPanel({ open }: { readonly open: OpenRoute }) {
  const shownSeverities = useView((state) => state.severitiesShown);
  const areWaivedShown = useView((state) => state.areWaivedShown);
  const [shownCount, setShownCount] = useState(pageCount);
  const [active, setActive] = useState(0);
  const all = [...open.findings.values()].sort(byWeight);
  const shown = all.filter((one) =>
    one.waiverId === null
      ? shownSeverities.includes(one.severity)
      : areWaivedShown && shownSeverities.includes(one.severity),
  );
  const rows = shown.slice(0, shownCount);
  const stop = Math.min(active, rows.length - 1);

  const walk = (event: KeyboardEvent<HTMLUListElement>): void => {
    const step = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
    if (step === 0) return;
    event.preventDefault();
    const next = Math.min(rows.length - 1, Math.max(0, stop + step));
    setActive(next);
    const key = rows[next]?.key;
    event.currentTarget.querySelector<HTMLElement>(`[data-finding="${CSS.escape(key ?? "")}"]`)?.focus();
  };

  return (
    <section className="findings" aria-label="Findings">
      <Counts all={all} />
      {all.length === 0 && (
        <p className="quiet empty">The rules found nothing. They check this route after every edit.</p>
      )}
      {all.length > 0 && rows.length === 0 && (
        <p className="quiet empty">All findings are filtered out; press a count to show it.</p>
      )}
      <ul onKeyDown={walk} aria-label="Findings, worst first">
        {rows.map((finding, i) => (
          <FindingRow key={finding.key} finding={finding} open={open} isTabStop={i === stop} />
        ))}
      </ul>
      {shown.length > rows.length && (
        <button type="button" className="fix more" onClick={() => setShownCount(shownCount + pageCount)}>
          Show {Math.min(pageCount, shown.length - rows.length)} more
        </button>
      )}
    </section>
  );
}

function Counts({ all }: { readonly all: readonly WindowFinding[] }) {
  const { view } = useSession();
  const shown = useView((state) => state.severitiesShown);
  const areWaivedShown = useView((state) => state.areWaivedShown);
  const waivedCount = all.filter((one) => one.waiverId !== null).length;
  const toggle = (severity: Severity): void =>
    view.setState({
      severitiesShown: shown.includes(severity) ? shown.filter((one) => one !== severity) : [...shown, severity],
    });
  return (
    <header className="counts">
      <h2>Findings</h2>
      {severities.map((severity) => {
        const count = all.filter((one) => one.severity === severity && one.waiverId === null).length;
        return (
          <button
            key={severity}
            type="button"
            className="count"
            aria-pressed={shown.includes(severity)}
            onClick={() => toggle(severity)}
          >
            <FindingGlyph severity={severity} />
            {count} {count === 1 ? severity : `${severity}s`}
          </button>
        );
      })}
      {waivedCount > 0 && (
        <button
          type="button"
          className="count"
          aria-pressed={areWaivedShown}
          onClick={() => view.setState({ areWaivedShown: !areWaivedShown })}
        >
          {waivedCount} waived
        </button>
      )}
    </header>
  );
}

function byWeight(a: WindowFinding, b: WindowFinding): number {
  return (
    rank[a.severity] - rank[b.severity] ||
    (a.ruleId < b.ruleId ? -1 : a.ruleId > b.ruleId ? 1 : 0) ||
    (a.at && b.at ? a.at.eastM - b.at.eastM : 0) ||
    (a.key < b.key ? -1 : 1)
  );
}
