import { type Point, pointOnSpan, spanBearingRad } from "../plant/geometry.ts";
import { type LabelLine, labelSizeMm, roundCandidates } from "../sheets/paper/labels.ts";
import { crossingName, structureName } from "../sheets/tradeWords.ts";
import { formatLength } from "../units/formatLength.ts";
import type { ModelDesk, RouteLayer } from "./modelDesk.ts";
import { levelBlock } from "./routeBlocks.ts";

/** How far a crossing's edges are drawn to either side of the line, m. */
const edgeReachM = 10;
/** Depth a structure is drawn with: nobody measured how far it goes back, m. */
const structureDepthM = 2;

/** What lies under the line and stands beside it. */
export function drawModelSite(desk: ModelDesk): void {
  const { plant } = desk;
  const system = plant.settings().unitSystem;
  for (const id of plant.all("crossing")) {
    const { spanId, offsetM, widthM, surface, name } = plant.rowOf("crossing", id);
    for (const edgeM of [offsetM - widthM / 2, offsetM + widthM / 2]) {
      desk.line(
        "CROSSING",
        [-edgeReachM, edgeReachM].map((leftM) => beside(desk, spanId, edgeM, leftM)),
        { dashed: true },
      );
    }
    note(desk, "CROSSING", beside(desk, spanId, offsetM, edgeReachM), crossingName(surface, name));
  }
  for (const id of plant.all("structure")) {
    const one = plant.rowOf("structure", id);
    const side = one.side === "left" ? 1 : -1;
    const near = one.besideM > 0 ? side * one.besideM : -structureDepthM / 2;
    const far = near + (one.besideM > 0 ? side : 1) * structureDepthM;
    const corner = (alongM: number, leftM: number) => beside(desk, one.spanId, one.offsetM + alongM, leftM);
    const half = one.lengthM / 2;
    desk.line("STRUCTURE", [corner(-half, near), corner(half, near), corner(half, far), corner(-half, far)], {
      closed: true,
    });
    note(desk, "STRUCTURE", corner(0, far), structureName(one, system));
  }
  for (const id of plant.all("groundPoint")) {
    const { spanId, offsetM, groundM } = plant.rowOf("groundPoint", id);
    const at = pointOnSpan(plant, spanId, offsetM);
    desk.symbol("GROUND", levelBlock(), at, 0);
    note(desk, "GROUND", at, formatLength(groundM, system, "height"));
  }
}

function beside({ plant }: ModelDesk, spanId: string, offsetM: number, leftM: number): Point {
  const { eastM, northM } = pointOnSpan(plant, spanId, offsetM);
  const turn = spanBearingRad(plant, spanId) + Math.PI / 2;
  return { eastM: eastM + leftM * Math.cos(turn), northM: northM + leftM * Math.sin(turn) };
}

function note(desk: ModelDesk, layer: RouteLayer, at: Point, text: string): void {
  const lines: LabelLine[] = [{ text, face: "narrow", heightMm: 2 }];
  const { width, height } = labelSizeMm(lines);
  desk.label(4, layer, lines, at, (paper) => roundCandidates(paper, width, height, 2.5));
}
