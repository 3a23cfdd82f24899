import { useState } from "react";
import type { CatalogueName } from "../../core/model/catalogueNames.ts";
import { freshIds } from "../../core/model/freshId.ts";
import { type Row, tables } from "../../core/model/tables.ts";
import { runCommand } from "../app/edits.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { useLookOnly } from "../app/useLookOnly.ts";
import { useSession } from "../app/useSession.ts";
import { nameOf } from "./columnForm.ts";
import { FieldLine } from "./FieldLine.tsx";
import { catalogueWords, columnName, words } from "./words.ts";

/** One catalogue: its rows as a list, the chosen one as a form, and what can be done with it. */
export function CatalogueForm({ open, table }: { readonly open: OpenRoute; readonly table: CatalogueName }) {
  const [chosenId, setChosenId] = useState<string | null>(null);
  const rows = [...open.route[table].values()];
  const row = rows.find((one) => one.id === chosenId) ?? rows[0];
  if (!row) return <p className="quiet">{words.empty}</p>;
  return (
    <div className="catalogue">
      <nav aria-label={`${words.rows}: ${catalogueWords[table]}`}>
        <ol>
          {rows.map((one) => (
            <li key={one.id}>
              <button type="button" aria-current={one.id === row.id} onClick={() => setChosenId(one.id)}>
                {rowTitle(open, one)} <span className="quiet">{one.basisMark}</span>
              </button>
            </li>
          ))}
        </ol>
      </nav>
      <div className="settings-form" key={row.id}>
        <RowActs open={open} table={table} row={row} onMade={setChosenId} />
        <RowFields open={open} table={table} row={row} />
      </div>
    </div>
  );
}

type RowProps = { readonly open: OpenRoute; readonly table: CatalogueName; readonly row: Row<CatalogueName> };

/** What can be done with the chosen row. */
function RowActs({ open, table, row, onMade }: RowProps & { readonly onMade: (id: string) => void }) {
  const session = useSession();
  const lookOnly = useLookOnly();
  const make = async (command: string, input: (id: string) => object): Promise<void> => {
    const id = freshIds(open.route, table)();
    if (await runCommand(session, command, input(id))) onMade(id);
  };
  const act = (name: string, run: () => Promise<unknown>) => (
    <button
      type="button"
      className="fix"
      disabled={lookOnly !== null}
      title={lookOnly ?? undefined}
      onClick={() => void run()}
    >
      {name}
    </button>
  );
  return (
    <div className="settings-acts">
      {act(words.add, () => make("catalogue.add", (id) => ({ table, row: standIn(row, id) })))}
      {"name" in row &&
        act(words.copy, () =>
          make("catalogue.copy", (newId) => ({ table, id: row.id, newId, name: words.copyName(row.name) })),
        )}
      {act(words.remove, () => runCommand(session, "catalogue.remove", { table, id: row.id }))}
    </div>
  );
}

function RowFields({ open, table, row }: RowProps) {
  const session = useSession();
  const values = new Map<string, string | number | null>(Object.entries(row));
  return Object.keys(tables[table].shape)
    .filter((column) => column !== "id")
    .map((column) => (
      <FieldLine
        key={column}
        route={open.route}
        table={table}
        column={column}
        value={values.get(column) ?? ""}
        units={unitsOf(open)}
        name={columnName(column)}
        onKeep={(kept) => void runCommand(session, "catalogue.set", { table, id: row.id, values: { [column]: kept } })}
      />
    ));
}

/** A new row with another's figures, which says that they only stand in. */
function standIn(row: Row<CatalogueName>, id: string): object {
  const name = "name" in row ? { name: words.newName(row.name) } : {};
  return {
    ...row,
    ...name,
    id,
    basisDocument: "trade practice",
    basisClause: words.standIn(nameOf(row)),
    basisEdition: "",
    basisMark: "practice",
  };
}

function rowTitle(open: OpenRoute, row: Row<CatalogueName>): string {
  const set =
    "clearanceSetId" in row
      ? open.route.clearanceSet.get(row.clearanceSetId)
      : "strengthSetId" in row
        ? open.route.strengthSet.get(row.strengthSetId)
        : undefined;
  return set ? `${set.name}: ${nameOf(row)}` : nameOf(row);
}
