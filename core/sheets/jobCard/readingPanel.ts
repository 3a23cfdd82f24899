import type { Plant } from "../../plant/plant.ts";
import { fixedText } from "../../units/fixedText.ts";
import type { FieldsRead } from "../asBuilt/fieldsRead.ts";
import type { Mark } from "../paper/displayList.ts";
import { wrapText } from "../paper/fitText.ts";
import { bodyMm, rectangle, smallMm, stroke, words } from "../paper/marks.ts";
import { textWidthMm } from "../paper/measureText.ts";
import { panelHead, underHead } from "../paper/panel.ts";
import type { PaperBox } from "../paper/paper.ts";
import { cellPart, type Part } from "../paper/part.ts";
import { type PortAndReading, readingNotes, terminalReadings, waveWords } from "./terminalReadings.ts";

const labelMm = 32;
const rowMm = 3.7;
const fieldMm = 6.4;
const noteMm = 3.2;
/** Figures stand at this pitch or closer, so that those of a terminal with few ports are not strewn over the sheet. */
const widestMm = 17;

/** What a meter should show at every port before its drop is plugged in, each over a field for what it does show, filled where that was read. */
export type ReadingPanel = { readonly heightMm: number; readonly draw: (box: PaperBox) => readonly Mark[] };

/** The panel of a terminal's readings, as wide as told. */
export function readingPanel(plant: Plant, terminalId: string, widthMm: number, read: FieldsRead): ReadingPanel {
  const ports = terminalReadings(plant, terminalId);
  const notes = readingNotes(plant, ports).flatMap((note) => {
    const part: Part = { as: "paragraph" };
    return wrapText(note, "plain", smallMm, widthMm).map((text) => ({ text, part }));
  });
  return {
    heightMm: 7 + 3 * rowMm + fieldMm + 1.6 + notes.length * noteMm + 1,
    draw(box) {
      const under = underHead(box);
      const fields = under.top - 3 * rowMm - fieldMm;
      return [
        ...panelHead(`Light at the ports${waveWords(plant, ports)}, measured before the drops are plugged in`, box),
        ...figures(
          ports.map((one) => ({ ...one, measured: read.lightText(terminalId, one.port) })),
          under,
        ),
        ...notes.map(({ text, part }, index) =>
          words(text, [box.left, fields - 4 - index * noteMm], { heightMm: smallMm, layer: "tables", part }),
        ),
      ];
    },
  };
}

/** A port with what was measured at it; empty to be written in. */
type MeasuredPort = PortAndReading & { readonly measured: string };

function figures(ports: readonly MeasuredPort[], box: PaperBox): readonly Mark[] {
  const pitch = Math.min(widestMm, (box.right - box.left - labelMm) / ports.length);
  const bases = [2, 2.9, 2.9].map((over, row) => box.top - over - row * rowMm);
  const fieldBottom = box.top - 3 * rowMm - fieldMm;
  const table = { columnCount: ports.length + 1 };
  const rows = [0, 1, 2, 3].map(() => ({ table }));
  const labels = ["Port", "Expected, dBm: least", "most", "Measured, dBm"].map((text, row) =>
    words(text, [box.left + labelMm - 2.4, bases[row] ?? fieldBottom + 2], {
      heightMm: smallMm,
      align: "right",
      layer: "tables",
      part: cellPart(rows[row] ?? { table }, 0, "row"),
    }),
  );
  const columns = ports.flatMap(({ port, reading, measured }, index) => {
    const left = box.left + labelMm + index * pitch;
    const power = reading.kind === "known" ? reading.arrives : null;
    const texts = [
      String(port),
      ...(power ? [power.leastDbm, power.mostDbm].map((one) => fixedText(one, 1)) : ["–", "–"]),
    ];
    return [
      ...texts.map((text, row) =>
        words(text, [left + (pitch - 1.4) / 2, bases[row] ?? 0], {
          face: row === 0 ? "narrowBold" : "narrow",
          heightMm: bodyMm,
          align: "middle",
          layer: "tables",
          part: cellPart(rows[row] ?? { table }, index + 1),
        }),
      ),
      rectangle("tables", "thin", [left, fieldBottom], pitch - 1.4, fieldMm),
      ...(measured === ""
        ? []
        : [
            words(measured, [left + (pitch - 1.4) / 2, fieldBottom + 2], {
              face: "narrowBold",
              heightMm: Math.min(bodyMm, (bodyMm * (pitch - 2)) / textWidthMm(measured, "narrowBold", bodyMm)),
              align: "middle",
              layer: "tables",
              part: cellPart(rows[3] ?? { table }, index + 1),
            }),
          ]),
    ];
  });
  const ruleY = box.top - rowMm + 0.6;
  const end = box.left + labelMm + ports.length * pitch - 1.4;
  return [
    ...labels,
    ...columns,
    stroke("tables", "fine", [
      [box.left + labelMm, ruleY],
      [end, ruleY],
    ]),
  ];
}
