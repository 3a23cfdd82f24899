import { spanName } from "../../../core/plant/names.ts";
import { refKey } from "../../app/ref.ts";
import { Facts } from "../Facts.tsx";
import { RefButton } from "../RefButton.tsx";
import { offsetWords, titleOf } from "../words.ts";
import type { Told } from "./told.ts";
import { hungWords as words } from "./words.ts";

/** A coil or a closure: where on the strand, on which cable, and for what. */
export function HungTold({ plant, id, units, table }: Told & { readonly table: "slack" | "closure" }) {
  const row = plant.rowOf(table, id);
  const coil = table === "slack" ? plant.rowOf("slack", id) : null;
  const first = plant.rowOf("pole", plant.rowOf("span", row.spanId).fromPoleId).tag;
  return (
    <Facts
      facts={[
        [
          words.span,
          <RefButton key="span" to={refKey("span", row.spanId)}>
            {spanName(plant, row.spanId)}
          </RefButton>,
        ],
        [words.fromPole(first), offsetWords(row.offsetM, units)],
        [words.cable, plant.rowOf("cable", row.cableId).name],
        [
          words.waitsFor,
          coil?.terminalId ? (
            <RefButton key="terminal" to={refKey("terminal", coil.terminalId)}>
              {titleOf(plant, refKey("terminal", coil.terminalId))}
            </RefButton>
          ) : null,
        ],
      ]}
    />
  );
}
