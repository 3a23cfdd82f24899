import type { KindRoll } from "../../../core/closeout/board.ts";
import { standingStates } from "../../../core/closeout/standing.ts";
import { builtKindWords } from "../../../core/closeout/words.ts";
import type { BuiltKind } from "../../../core/model/closeoutRows.ts";
import { GridPart } from "../../tables/GridPart.tsx";
import { StateChip } from "../StateGlyph.tsx";
import { stateWords, boardWords as words } from "../words.ts";
import { missingText, type ShownRow } from "./shownRows.ts";

/** Kinds that have a column; strand and cable, which have none, stand in a row of their own. */
export const shownKinds: readonly BuiltKind[] = ["pole", "span", "bond", "closure", "terminal", "port", "drop"];

type Props = {
  readonly row: ShownRow;
  readonly index: number;
  readonly topPx: number;
  readonly isActive: boolean;
  readonly onChoose: () => void;
};

/** One row of the board: kind by kind how far its things have come, what deviates, what is still to be read. */
export function BoardLine({ row, index, topPx, isActive, onChoose }: Props) {
  const missing = missingText(row.things);
  return (
    <GridPart
      role="row"
      id={`board-${row.id}`}
      data-row={row.id}
      aria-rowindex={index + 3}
      aria-selected={isActive}
      className={isActive ? "board-row is-active" : "board-row"}
      style={{ transform: `translateY(${topPx}px)` }}
      onClick={onChoose}
    >
      <GridPart role="rowheader">
        <b>{row.name}</b> <span className="quiet">{row.place}</span>
      </GridPart>
      {row.id === "long" ? <LongCells kinds={row.kinds} /> : <KindCells kinds={row.kinds} />}
      <GridPart role="gridcell" className={row.findings.length > 0 ? "is-deviating" : "quiet"}>
        {row.findings.length > 0 ? String(row.findings.length) : ""}
      </GridPart>
      <GridPart role="gridcell" title={missing} className={missing === "" ? "quiet" : ""}>
        {missing || words.nothingMissing}
      </GridPart>
    </GridPart>
  );
}

/** The whole route, under the headings. */
export function WholeLine({
  kinds,
  rows,
}: {
  readonly kinds: readonly KindRoll[];
  readonly rows: readonly ShownRow[];
}) {
  const findingCount = rows.reduce((sum, one) => sum + one.findings.length, 0);
  const missingCount = kinds.reduce((sum, one) => sum + one.missingCount, 0);
  const askedCount = kinds.reduce((sum, one) => sum + one.askedCount, 0);
  return (
    <GridPart role="row" className="board-row board-whole" aria-rowindex={2}>
      <GridPart role="rowheader">
        <b>{words.whole}</b>
      </GridPart>
      <KindCells kinds={kinds} />
      <GridPart role="gridcell" className={findingCount > 0 ? "is-deviating" : "quiet"}>
        {findingCount > 0 ? String(findingCount) : ""}
      </GridPart>
      <GridPart role="gridcell">{words.someOf(missingCount, askedCount, "")}</GridPart>
    </GridPart>
  );
}

function KindCells({ kinds }: { readonly kinds: readonly KindRoll[] }) {
  return shownKinds.map((kind) => {
    const roll = kinds.find((one) => one.kind === kind);
    return (
      <GridPart key={kind} role="gridcell">
        {roll && <StateChip state={roll.least} told={rollText(roll)} />}
      </GridPart>
    );
  });
}

function LongCells({ kinds }: { readonly kinds: readonly KindRoll[] }) {
  return (
    <GridPart role="gridcell" className="board-long">
      {kinds.map((one) => (
        <StateChip key={one.kind} state={one.least} told={`${builtKindWords[one.kind].many}: ${rollText(one)}`} />
      ))}
    </GridPart>
  );
}

/** Things of one kind in words: `4 built`, or `1 of 4 tested` where one is further than the others. */
function rollText({ count, byState, least }: KindRoll): string {
  if (byState[least] === count) return words.allOf(count, stateWords[least]);
  const next = standingStates.find((one, at) => at > standingStates.indexOf(least) && byState[one] > 0) ?? least;
  return words.someOf(count - byState[least], count, stateWords[next]);
}
