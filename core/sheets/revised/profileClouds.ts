import type { Plant } from "../../plant/plant.ts";
import { type ProfileStep, poleTopM, stepStationM } from "../../plant/profile.ts";
import { elevationOn } from "../../plant/profileSpan.ts";
import type { PaperPoint } from "../paper/displayList.ts";
import type { ProfileDesk } from "../profile/profilePaper.ts";
import { cloudBox, drawCloudsRound, pointsRound } from "./clouds.ts";
import type { ChangeLine } from "./told.ts";

/** What a set shows as changed: the route before, where there is one, what changed since, and the letter of its clouds. */
export type Changed = {
  readonly before: Plant | null;
  readonly lines: readonly ChangeLine[];
  readonly cloudLetter: string;
  /** The design, where the route is drawn as built; null where it is drawn as designed. */
  readonly designed: Plant | null;
};

/** Clouds round what changed on a profile: poles, attachments, the line of a span, and what lies under it or hangs on it. */
export function drawProfileClouds(desk: ProfileDesk, { before, lines, cloudLetter }: Changed): void {
  const boxes = lines.flatMap((line) => {
    const points = pointsOf(desk, line.isGone ? before : desk.plant, line);
    return points.length === 0 ? [] : [cloudBox(points, desk.chart)];
  });
  drawCloudsRound(desk, boxes, cloudLetter);
}

/** Where a changed row shows on the profile; none where it does not. */
function pointsOf(desk: ProfileDesk, plant: Plant | null, { table, id }: ChangeLine): readonly PaperPoint[] {
  switch (table) {
    case "pole":
      return polePoints(desk, id);
    case "attachment": {
      const row = plant?.row("attachment", id);
      return row ? attachmentPoints(desk, row.poleId, row.heightM) : [];
    }
    case "span":
      return alongSpan(desk, id, null);
    case "wireSag":
    case "crossing":
    case "structure":
    case "groundPoint":
    case "terminal":
    case "closure":
    case "slack": {
      const row = plant?.row(table, id);
      if (!row) return [];
      const isUnder = table === "crossing" || table === "structure" || table === "groundPoint";
      return alongSpan(desk, row.spanId, "offsetM" in row ? row.offsetM : null, isUnder);
    }
    default:
      return [];
  }
}

function polePoints(desk: ProfileDesk, poleId: string): readonly PaperPoint[] {
  const pole = desk.row.poles.find((one) => one.poleId === poleId);
  return pole ? [desk.at(pole.stationM, pole.footM), desk.at(pole.stationM, poleTopM(pole))] : [];
}

function attachmentPoints(desk: ProfileDesk, poleId: string, heightM: number): readonly PaperPoint[] {
  const pole = desk.row.poles.find((one) => one.poleId === poleId);
  return pole ? pointsRound(desk.at(pole.stationM, pole.footM + heightM)) : [];
}

/** A place of a span on our line, or on the ground under it; its middle where no offset is told. */
function alongSpan(desk: ProfileDesk, spanId: string, offsetM: number | null, isUnder = false): readonly PaperPoint[] {
  const step = desk.row.steps.find((one) => one.span.spanId === spanId);
  if (!step) return [];
  const at = offsetM ?? step.span.lengthM / 2;
  const elevationM = isUnder ? groundElevationM(desk, step, at) : lineElevationM(desk, step, at);
  return pointsRound(desk.at(stepStationM(step, at), elevationM));
}

function lineElevationM(desk: ProfileDesk, step: ProfileStep, offsetM: number): number {
  const { line } = step.span;
  return line ? elevationOn(step.span, line.stringing, offsetM) : groundElevationM(desk, step, offsetM);
}

/** The ground as it is drawn: measured, else straight from foot to foot. */
function groundElevationM(
  { row }: ProfileDesk,
  { span, reversed, inPoleId, outPoleId }: ProfileStep,
  offsetM: number,
): number {
  const footOf = (id: string) => row.poles.find((one) => one.poleId === id)?.footM ?? 0;
  const [from, to] = reversed ? [outPoleId, inPoleId] : [inPoleId, outPoleId];
  const points = span.ground ?? [
    { offsetM: 0, groundM: footOf(from) },
    { offsetM: span.lengthM, groundM: footOf(to) },
  ];
  const curve = { ...span, offsetsM: points.map((one) => one.offsetM) };
  return elevationOn(
    curve,
    points.map((one) => one.groundM),
    offsetM,
  );
}
