import PDFDocument from "pdfkit";
import type { Route } from "../../core/model/route.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { openChecker } from "../../core/rules/checker.ts";
import { composeSet } from "../../core/sheets/composeSet.ts";
import type { DrawingSet } from "../../core/sheets/paper/displayList.ts";
import { drawingFonts, readFont } from "../../electron/host/drawingFonts.ts";
import { writePdf } from "../../electron/host/writePdf.ts";
import { type Figures, medianMs } from "./measure.ts";

const sheetCounts = { least: 60, most: 75 } as const;
const pointsPerMm = 72 / 25.4;

/**
 * Composing and writing the set of a route that fills some 60 sheets, against the PDF library drawing the same lines and texts
 * without layout. Every sheet that is composed is written, so that both sides draw the same.
 */
export async function benchDraw(route: Route): Promise<Figures> {
  const findings = openChecker(openPlant(route)).findings();
  const compose = (): DrawingSet => composeSet(openPlant(route), findings);
  const set = compose();
  const sheetCount = set.sheets.length;
  if (sheetCount < sheetCounts.least || sheetCount > sheetCounts.most)
    throw new Error(`the route fills ${sheetCount} sheets`);
  const composeMs = await medianMs(3, () => null, compose);
  const writeMs = await medianMs(
    3,
    () => null,
    () => writePdf(set),
  );
  const bareMs = await medianMs(
    3,
    () => null,
    () => bare(set),
  );
  const withLayout = (await writePdf(set)).byteLength;
  const bareBytes = await bare(set);
  return {
    drawSheetCount: sheetCount,
    drawSetMs: composeMs + writeMs,
    drawOverBareLibrary: (composeMs + writeMs) / bareMs,
    writeOverBareLibrary: writeMs / bareMs,
    drawBytesOverBareLibrary: withLayout / bareBytes,
  };
}

/** The same marks by the library's own calls, one stroke each and one font for all. */
async function bare(set: DrawingSet): Promise<number> {
  const document = new PDFDocument({ autoFirstPage: false });
  let byteCount = 0;
  document.on("data", (chunk: Buffer) => {
    byteCount += chunk.length;
  });
  const ended = new Promise((resolve) => document.on("end", resolve));
  document.registerFont("plain", readFont(drawingFonts(null).plain));
  for (const { sizeMm, marks } of set.sheets) {
    const heightPt = sizeMm.height * pointsPerMm;
    document.addPage({ size: [sizeMm.width * pointsPerMm, heightPt], margin: 0 });
    document.font("plain").fontSize(8);
    for (const mark of marks) {
      if (mark.kind === "text") {
        document.text(mark.text, mark.atMm[0] * pointsPerMm, heightPt - mark.atMm[1] * pointsPerMm, {
          lineBreak: false,
        });
      } else if (mark.kind === "arc") {
        document
          .circle(
            mark.centreMm[0] * pointsPerMm,
            heightPt - mark.centreMm[1] * pointsPerMm,
            mark.radiusMm * pointsPerMm,
          )
          .stroke();
      } else if (mark.kind === "line") {
        for (const [index, [xMm, yMm]] of mark.pointsMm.entries()) {
          const place = [xMm * pointsPerMm, heightPt - yMm * pointsPerMm] as const;
          if (index === 0) document.moveTo(...place);
          else document.lineTo(...place);
        }
        document.stroke();
      }
    }
  }
  document.end();
  await ended;
  return byteCount;
}
