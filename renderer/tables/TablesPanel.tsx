import { type KeyboardEvent, useEffect, useRef } from "react";
import type { TableLayout } from "../../core/contract/wayMethods.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
import { keepWays } from "../app/ways.ts";
import { ColumnChooser } from "./ColumnChooser.tsx";
import { type Kind, kindOf, kinds } from "./kinds.ts";
import { TableButton } from "./TableButton.tsx";
import { TableGrid } from "./TableGrid.tsx";
import { plainLayout } from "./tableLayout.ts";
import { useAskedKind } from "./useAskedKind.ts";
import { tableWords } from "./words.ts";

const buttons = ["tableAdd", "tableRemove", "tableFill", "tableCopyHeadings", "tableReset", "tablesBeside", "tables"];

/** The tables: a tab a kind, the table of the chosen one, and what can be done in it. */
export function TablesPanel({ open, sizeFrac }: { readonly open: OpenRoute; readonly sizeFrac: number }) {
  const kind = kindOf(useView((state) => state.tables.kindId));
  return (
    <section className="tables" aria-label={tableWords.tables} style={{ flexBasis: `${sizeFrac * 100}%` }}>
      <KindTable key={open.fileName} open={open} kind={kind} />
    </section>
  );
}

function KindTable({ open, kind: whole }: { readonly open: OpenRoute; readonly kind: Kind }) {
  const session = useSession();
  const kind = useAskedKind(open, whole);
  const layout = useView((state) => state.ways.tables[kind.id] ?? plainLayout);
  const lay = (next: TableLayout): void =>
    keepWays(session, { tables: { ...session.view.getState().ways.tables, [kind.id]: next } });
  return (
    <>
      <div className="tables-bar">
        <Tabs chosen={whole} />
        <ColumnChooser key={whole.id} kind={kind} layout={layout} lay={lay} />
        {buttons.map((id) => (
          <TableButton key={id} actionId={id} />
        ))}
      </div>
      <TableGrid key={whole.id} open={open} kind={kind} layout={layout} lay={lay} />
    </>
  );
}

function Tabs({ chosen }: { readonly chosen: Kind }) {
  const { view } = useSession();
  const choose = (kindId: string): void => view.setState(({ tables }) => ({ tables: { ...tables, kindId } }));
  const walk = (event: KeyboardEvent<HTMLDivElement>): void => {
    const step = event.key === "ArrowRight" ? 1 : event.key === "ArrowLeft" ? -1 : 0;
    const next = kinds[(kinds.indexOf(chosen) + step + kinds.length) % kinds.length];
    if (step === 0 || !next) return;
    event.preventDefault();
    choose(next.id);
    event.currentTarget.querySelector<HTMLElement>(`[data-kind="${next.id}"]`)?.focus();
  };
  const list = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const tab = list.current?.querySelector(`[data-kind="${chosen.id}"]`);
    tab?.scrollIntoView({ block: "nearest", inline: "nearest" });
  }, [chosen]);
  return (
    <div ref={list} role="tablist" className="tables-tabs" aria-label={tableWords.kinds} onKeyDown={walk}>
      {kinds.map((one) => (
        <button
          key={one.id}
          type="button"
          role="tab"
          data-kind={one.id}
          aria-selected={one === chosen}
          tabIndex={one === chosen ? 0 : -1}
          onClick={() => choose(one.id)}
        >
          {one.name}
        </button>
      ))}
    </div>
  );
}
