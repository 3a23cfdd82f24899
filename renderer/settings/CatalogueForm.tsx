import { useState } from "react";
import type { CatalogueName } from "../../core/model/catalogueNames.ts";
import { freshIds } from "../../core/model/freshId.ts";
import { type Row, tables } from "../../core/model/tables.ts";
import { runCommand } from "../app/edits.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { useSession } from "../app/useSession.ts";
import { nameOf } from "./columnForm.ts";
import { FieldLine } from "./FieldLine.tsx";
import { catalogueWords, columnName, words } from "./words.ts";

/** One catalogue: its rows as a list, the chosen one as a form, and what can be done with it. */
export function CatalogueForm({ open, table }: { readonly open: OpenRoute; readonly table: CatalogueName }) {
  const session = useSession();
  const [chosenId, setChosenId] = useState<string | null>(null);
  const rows = [...open.route[table].values()];
  const row = rows.find((one) => one.id === chosenId) ?? rows[0];
  if (!row) return <p className="quiet">{words.empty}</p>;
  const make = async (command: string, input: object, id: string): Promise<void> => {
    if (await runCommand(session, command, input)) setChosenId(id);
  };
  const newId = (): string => freshIds(open.route, table)();
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
        <div className="settings-acts">
          <button
            type="button"
            className="fix"
            onClick={() => {
              const id = newId();
              void make("catalogue.add", { table, row: standIn(row, id) }, id);
            }}
          >
            {words.add}
          </button>
          {"name" in row && (
            <button
              type="button"
              className="fix"
              onClick={() => {
                const id = newId();
                void make("catalogue.copy", { table, id: row.id, newId: id, name: words.copyName(row.name) }, id);
              }}
            >
              {words.copy}
            </button>
          )}
          <button
            type="button"
            className="fix"
            onClick={() => void runCommand(session, "catalogue.remove", { table, id: row.id })}
          >
            {words.remove}
          </button>
        </div>
        <RowFields open={open} table={table} row={row} />
      </div>
    </div>
  );
}

function RowFields(props: {
  readonly open: OpenRoute;
  readonly table: CatalogueName;
  readonly row: Row<CatalogueName>;
}) {
  const { open, table, row } = props;
  const session = useSession();
  const values = new Map<string, string | number>(Object.entries(row));
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
  const set = "clearanceSetId" in row ? open.route.clearanceSet.get(row.clearanceSetId) : undefined;
  return set ? `${set.name}: ${nameOf(row)}` : nameOf(row);
}
