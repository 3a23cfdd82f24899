import { Fragment, type KeyboardEvent, type ReactNode, useState } from "react";
import type { Severity } from "../../core/rules/rule.ts";
import type { OpenRoute, WindowFinding } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { useSession, useView } from "../app/useSession.ts";
import { FindingGlyph } from "./FindingGlyph.tsx";
import { FindingRow } from "./FindingRow.tsx";
import { GroupHead } from "./findings/GroupHead.tsx";
import { type FindingGroup, type Grouping, grouped, groupings, saysAll } from "./findings/grouping.ts";
import { findingsWords } from "./findings/words.ts";

const severities: readonly Severity[] = ["error", "warning", "note"];
const pageCount = 150;

/** What is wrong, along the lower edge: counts and text that filter, groups, rows that lead to the place and mend. */
export function FindingsPanel({ open }: { readonly open: OpenRoute }) {
  const shownSeverities = useView((state) => state.severitiesShown);
  const areWaivedShown = useView((state) => state.areWaivedShown);
  const [text, setText] = useState("");
  const [by, setBy] = useState<Grouping>("rule");
  const [shownCount, setShownCount] = useState(pageCount);
  const [active, setActive] = useState(0);
  const all = [...open.findings.values()];
  const shown = all.filter(
    (one) =>
      shownSeverities.includes(one.severity) &&
      (one.waiverId === null || areWaivedShown) &&
      saysAll(one, text, unitsOf(open)),
  );
  const groups = firstOf(grouped(open.plant, shown, by), shownCount);
  const rows = groups.flatMap((one) => one.findings);
  const stop = Math.min(active, rows.length - 1);

  const walk = (event: KeyboardEvent<HTMLUListElement>): void => {
    const isRow = event.target instanceof HTMLElement && event.target.dataset.finding !== undefined;
    const step = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
    if (step === 0 || !isRow) return;
    event.preventDefault();
    const next = Math.min(rows.length - 1, Math.max(0, stop + step));
    setActive(next);
    const key = rows[next]?.key;
    event.currentTarget.querySelector<HTMLElement>(`[data-finding="${CSS.escape(key ?? "")}"]`)?.focus();
  };

  return (
    <section className="findings" aria-label={findingsWords.title}>
      <Counts all={all}>
        <input
          type="search"
          className="findings-filter"
          aria-label={findingsWords.filter}
          placeholder={findingsWords.filter}
          value={text}
          onChange={(event) => setText(event.target.value)}
        />
        <GroupChoice by={by} onChoose={setBy} />
      </Counts>
      {all.length === 0 && <p className="quiet empty">{findingsWords.none}</p>}
      {all.length > 0 && rows.length === 0 && <p className="quiet empty">{findingsWords.filtered}</p>}
      <ul onKeyDown={walk} aria-label={findingsWords.list}>
        {groups.map((group) => (
          <Fragment key={`${by} ${group.key}`}>
            <GroupHead group={group} open={open} isOneRule={by === "rule"} />
            {group.findings.map((finding) => (
              <FindingRow key={finding.key} finding={finding} open={open} isTabStop={finding === rows[stop]} />
            ))}
          </Fragment>
        ))}
      </ul>
      {shown.length > rows.length && (
        <button type="button" className="fix more" onClick={() => setShownCount(shownCount + pageCount)}>
          {findingsWords.more(Math.min(pageCount, shown.length - rows.length))}
        </button>
      )}
    </section>
  );
}

/** The first findings of the groups, in their order. */
function firstOf(groups: readonly FindingGroup[], count: number): readonly FindingGroup[] {
  let left = count;
  return groups.flatMap((group) => {
    const findings = group.findings.slice(0, Math.max(0, left));
    left -= group.findings.length;
    return findings.length === 0 ? [] : [{ ...group, findings }];
  });
}

type GroupChoiceProps = { readonly by: Grouping; readonly onChoose: (by: Grouping) => void };

function GroupChoice({ by, onChoose }: GroupChoiceProps) {
  return (
    <label className="findings-group-by">
      {findingsWords.group}{" "}
      <select
        value={by}
        onChange={(event) => onChoose(groupings.find((one) => one === event.target.value) ?? "severity")}
      >
        {groupings.map((one) => (
          <option key={one} value={one}>
            {findingsWords.groups[one]}
          </option>
        ))}
      </select>
    </label>
  );
}

function Counts({ all, children }: { readonly all: readonly WindowFinding[]; readonly children: ReactNode }) {
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
      <h2>{findingsWords.title}</h2>
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
            {findingsWords.counted(severity, count)}
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
          {findingsWords.waivedCount(waivedCount)}
        </button>
      )}
      {children}
    </header>
  );
}
