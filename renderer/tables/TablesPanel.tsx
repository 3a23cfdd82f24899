import type { TableLayout } from "../../core/contract/wayMethods.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
import { keepWays } from "../app/ways.ts";
import { Tabs } from "../panels/Tabs.tsx";
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

const kindIds = kinds.map((one) => one.id);
const kindNames = Object.fromEntries(kinds.map(({ id, name }) => [id, name]));

function KindTable({ open, kind: whole }: { readonly open: OpenRoute; readonly kind: Kind }) {
  const session = useSession();
  const kind = useAskedKind(open, whole);
  const layout = useView((state) => state.ways.tables[kind.id] ?? plainLayout);
  const lay = (next: TableLayout): void =>
    keepWays(session, { tables: { ...session.view.getState().ways.tables, [kind.id]: next } });
  return (
    <>
      <div className="tables-bar">
        <Tabs
          label={tableWords.kinds}
          tabs={kindIds}
          words={kindNames}
          tab={whole.id}
          onTab={(kindId) => session.view.setState(({ tables }) => ({ tables: { ...tables, kindId } }))}
        />
        <ColumnChooser key={whole.id} kind={kind} layout={layout} lay={lay} />
        {buttons.map((id) => (
          <TableButton key={id} actionId={id} />
        ))}
      </div>
      <TableGrid key={whole.id} open={open} kind={kind} layout={layout} lay={lay} />
    </>
  );
}
