import type { TableName } from "../../../core/model/tables.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import type { UnitSystem } from "../../../core/units/unitSystem.ts";
import type { Column } from "../../tables/columns/column.ts";
import { kinds } from "../../tables/kinds.ts";
import { Field } from "./Field.tsx";
import { fieldWords } from "./words.ts";

/** What names one row or puts it in its place; never the same for several. */
const ownColumns = ["tag", "name", "address", "offsetM", "eastM", "northM", "order", "port"];

type Props = {
  readonly plant: Plant;
  readonly units: UnitSystem;
  readonly table: TableName;
  readonly rowIds: readonly string[];
};

/** Every fact of a row that may be edited, as fields; of several rows of one kind those they can share. */
export function FieldList({ plant, units, table, rowIds }: Props) {
  const columns = fieldsOf(table).filter((one) => rowIds.length === 1 || !ownColumns.includes(one.key));
  if (columns.length === 0) return null;
  return (
    <fieldset className="fields" aria-label={rowIds.length === 1 ? fieldWords.facts : fieldWords.shared}>
      {columns.map((column) => (
        <Field key={`${column.key} ${rowIds.join(" ")}`} column={column} given={{ plant, units }} rowIds={rowIds} />
      ))}
    </fieldset>
  );
}

/** The columns of a kind of row that can be written: the same that its table is edited by. */
function fieldsOf(table: TableName): readonly Column[] {
  return kinds.find((one) => one.id === table)?.columns.filter((one) => one.write !== null) ?? [];
}
