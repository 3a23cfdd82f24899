import type { TableName } from "../../../core/model/tables.ts";
import type { Plant } from "../../../core/plant/plant.ts";
import { RefButton } from "../RefButton.tsx";
import { titleOf } from "../words.ts";
import { touchedBy } from "./touchedBy.ts";
import { fieldWords } from "./words.ts";

const mostListed = 60;

/** What a row leans on and what leans on it; each leads there. */
export function Touches({
  plant,
  table,
  id,
}: {
  readonly plant: Plant;
  readonly table: TableName;
  readonly id: string;
}) {
  const refs = touchedBy(plant, table, id);
  if (refs.length === 0) return null;
  return (
    <details>
      <summary>{`${fieldWords.touches} (${refs.length})`}</summary>
      <ul className="lines">
        {refs.slice(0, mostListed).map((ref) => (
          <li key={ref}>
            <RefButton to={ref}>{titleOf(plant, ref)}</RefButton>
          </li>
        ))}
      </ul>
    </details>
  );
}
