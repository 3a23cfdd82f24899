import type { Block } from "./flow.ts";
import { rectangle, smallMm, words } from "./marks.ts";
import type { TerminalFacts } from "./terminalFacts.ts";

const fieldMm = 6;
const labelMm = 4;
const perRow = 12;

/** A field for each port's measured light. */
export function readingBlock(facts: TerminalFacts): Block {
  const rowMm = fieldMm + labelMm;
  return {
    heightMm: Math.ceil(facts.ports.length / perRow) * rowMm + 2,
    draw: ({ left, right, top }) => {
      const width = (right - left) / perRow;
      return facts.ports.flatMap(({ port }, index) => {
        const x = left + (index % perRow) * width;
        const bottom = top - (Math.floor(index / perRow) + 1) * rowMm;
        return [
          words(`${port}  dBm`, [x, bottom + fieldMm + 1], { face: "narrow", heightMm: smallMm, layer: "tables" }),
          rectangle("tables", "thin", [x, bottom], width - 1.8, fieldMm),
        ];
      });
    },
  };
}
