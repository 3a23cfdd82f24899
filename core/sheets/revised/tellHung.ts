import type { RowChange } from "../../model/rowChange.ts";
import type { Terminal } from "../../model/tables.ts";
import { spanName } from "../../plant/names.ts";
import type { Plant } from "../../plant/plant.ts";
import { terminalHang } from "../../plant/terminalView.ts";
import { formatLength } from "../../units/formatLength.ts";
import { changedColumns } from "./columnWords.ts";
import { pairsOf } from "./pairs.ts";
import { type Between, type ChangeLine, lineAbout } from "./told.ts";

/** Terminals hung, taken down, moved, renamed or changed for another model. */
export function tellTerminals(rows: readonly RowChange[], between: Between): readonly ChangeLine[] {
  return pairsOf(rows, "terminal").flatMap(({ before, after }) =>
    terminalTexts(before, after, between).map((text) => lineAbout("terminal", after, before, text)),
  );
}

function terminalTexts(
  before: Terminal | null,
  after: Terminal | null,
  { before: was, after: is }: Between,
): readonly string[] {
  if (!after) return before ? [`Terminal ${before.name} taken down, ${hangWords(was, before)}`] : [];
  if (!before) return [`Terminal ${after.name} hung, ${hangWords(is, after)}`];
  const moved = moveWords(before, after, { before: was, after: is });
  const others = changedColumns(
    "terminal",
    [{ ...before, spanId: after.spanId, offsetM: after.offsetM }, after],
    [was, is],
  );
  return [
    ...(moved === null ? [] : [`Terminal ${after.name} moved ${moved}`]),
    ...others.map((one) => `Terminal ${after.name}: ${one}`),
  ];
}

function hangWords(plant: Plant, { id }: Terminal): string {
  const { poleId, fromPoleM } = terminalHang(plant, id);
  const distance = formatLength(fromPoleM, plant.settings().unitSystem, "offset");
  return `${distance} from pole ${plant.rowOf("pole", poleId).tag}`;
}

/** How something moved along the line, such as `12 ft towards pole 31`; null where it hangs as it did. */
export function moveWords(
  before: { readonly id: string; readonly spanId: string; readonly offsetM: number },
  after: { readonly id: string; readonly spanId: string; readonly offsetM: number },
  { before: was, after: is }: Between,
): string | null {
  const system = is.settings().unitSystem;
  if (before.spanId !== after.spanId) {
    const from = was.row("span", before.spanId) ? spanName(was, before.spanId) : "";
    return `from span ${from} to span ${spanName(is, after.spanId)}`;
  }
  const alongM = after.offsetM - before.offsetM;
  if (alongM === 0) return null;
  const { fromPoleId, toPoleId } = is.rowOf("span", after.spanId);
  const far = Math.abs(alongM);
  return `${formatLength(far, system, far < 1.5 ? "offset" : "span")} towards pole ${is.rowOf("pole", alongM > 0 ? toPoleId : fromPoleId).tag}`;
}
