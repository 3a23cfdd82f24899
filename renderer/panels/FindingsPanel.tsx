import { Fragment, type KeyboardEvent, useEffect, useRef, useState } from "react";
import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { useSession, useView } from "../app/useSession.ts";
import { EmptyState } from "./EmptyState.tsx";
import { FindingRow } from "./FindingRow.tsx";
import { Choice, FindingsHead, type Fold } from "./findings/FindingsHead.tsx";
import { GroupHead } from "./findings/GroupHead.tsx";
import { type FindingGroup, type Grouping, grouped, groupings, saysAll } from "./findings/grouping.ts";
import { type Sorting, sorted, sortings } from "./findings/sorting.ts";
import { findingsWords } from "./findings/words.ts";

const pageCount = 150;

type Props = { readonly open: OpenRoute; readonly fold: Fold | null };

/** What is wrong, along the lower edge: counts and text that filter, groups, rows that lead to the place and mend. */
export function FindingsPanel({ open, fold }: Props) {
  const { view } = useSession();
  const shownSeverities = useView((state) => state.severitiesShown);
  const areWaivedShown = useView((state) => state.areWaivedShown);
  const [text, setText] = useState("");
  const [by, setBy] = useState<Grouping>("rule");
  const [sort, setSort] = useState<Sorting>("worst");
  const [shownCount, setShownCount] = useState(pageCount);
  const [active, setActive] = useState(0);
  const all = [...open.findings.values()];
  const shown = all.filter(
    (one) =>
      shownSeverities.includes(one.severity) &&
      (one.waiverId === null || areWaivedShown) &&
      saysAll(one, text, unitsOf(open)),
  );
  const groups = firstOf(grouped(open.plant, sorted(shown, sort), by), shownCount);
  const rows = groups.flatMap((one) => one.findings);
  const stop = Math.min(active, rows.length - 1);
  const list = useRef<HTMLUListElement>(null);
  const isHandHere = useRef(false);
  useEffect(() => {
    // the button that mended a finding goes with it: the hand stays in the list
    if (isHandHere.current && document.activeElement === document.body)
      list.current?.querySelector<HTMLElement>('[data-finding][tabindex="0"]')?.focus();
  });

  const showAll = (): void => {
    setText("");
    view.setState({ severitiesShown: ["error", "warning", "note"], areWaivedShown: true });
  };
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

  if (fold?.isFolded)
    return (
      <section className="findings is-folded" aria-label={findingsWords.title}>
        <FindingsHead all={all} fold={fold} />
      </section>
    );
  return (
    <section className="findings" aria-label={findingsWords.title}>
      <FindingsHead all={all} fold={fold}>
        <input
          type="search"
          className="findings-filter"
          aria-label={findingsWords.filter}
          placeholder={findingsWords.filter}
          value={text}
          onChange={(event) => setText(event.target.value)}
        />
        <Choice
          name={findingsWords.group}
          value={by}
          options={groupings}
          words={findingsWords.groups}
          onChoose={setBy}
        />
        <Choice
          name={findingsWords.sort}
          value={sort}
          options={sortings}
          words={findingsWords.sorts}
          onChoose={setSort}
        />
      </FindingsHead>
      {all.length === 0 && <NothingFound open={open} />}
      {all.length > 0 && rows.length === 0 && (
        <EmptyState says={findingsWords.filtered} way={{ name: findingsWords.showAll, run: showAll }} />
      )}
      <ul
        ref={list}
        aria-label={findingsWords.list}
        onKeyDown={walk}
        onFocus={() => {
          isHandHere.current = true;
        }}
        onBlur={(event) => {
          isHandHere.current = event.relatedTarget === null && event.currentTarget.contains(document.activeElement);
        }}
      >
        {groups.map((group) => (
          <Fragment key={`${by} ${group.key}`}>
            {by !== "nothing" && <GroupHead group={group} open={open} isOneRule={by === "rule"} />}
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

function NothingFound({ open }: { readonly open: OpenRoute }) {
  const isEmpty = open.route.pole.size === 0 && open.route.livingUnit.size === 0;
  return isEmpty ? (
    <EmptyState says={findingsWords.nothingToCheck} actionIds={["import"]} />
  ) : (
    <EmptyState says={findingsWords.none} actionIds={["rules"]} />
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
