import type { Plant } from "../../core/plant/plant.ts";
import { EmptyState } from "../panels/EmptyState.tsx";
import type { Kind } from "./kinds.ts";
import { tableWords } from "./words.ts";

type Props = {
  readonly kind: Kind;
  readonly plant: Plant;
  readonly isFiltered: boolean;
  readonly showAll: () => void;
};

/** A table without rows: why, and what brings some. */
export function NoRows({ kind, plant, isFiltered, showAll }: Props) {
  if (!isFiltered) return <EmptyState says={tableWords.noRows} actionIds={[whatBringsRows(kind, plant)]} />;
  return <EmptyState says={tableWords.noneLeft} way={{ name: tableWords.clearFilters, run: showAll }} />;
}

const ofCloseout = ["reading", "punch"];
const laidOut = ["strandSection", "cable", "terminal", "port", "fiber", "drop"];

function whatBringsRows(kind: Kind, plant: Plant): string {
  if (kind.add?.(plant, null)) return "tableAdd";
  if (ofCloseout.includes(kind.id)) return "closeout";
  return laidOut.includes(kind.id) && plant.route().livingUnit.size > 0 ? "layout" : "import";
}
