import { cablePath, cablesInSpan } from "../plant/cablePath.ts";
import { type Point, pointOnSpan, spanBearingRad, spanEnds } from "../plant/geometry.ts";
import { type LabelLine, labelSizeMm, roundCandidates } from "../sheets/paper/labels.ts";
import { readableRad, shifted } from "../sheets/plan/planDesk.ts";
import { formatLength } from "../units/formatLength.ts";
import { groundPerMmM, type ModelDesk } from "./modelDesk.ts";
import { anchorBlock, poleBlock } from "./routeBlocks.ts";

/** Spans from pole to pole, strand where it is strung, each cable along its way. */
export function drawModelLine(desk: ModelDesk): void {
  const { plant } = desk;
  for (const spanId of plant.all("span")) {
    const { from, to } = spanEnds(plant, spanId);
    const { strandSectionId } = plant.rowOf("span", spanId);
    desk.line("SPAN", [from, to], { dashed: true });
    if (strandSectionId !== null) desk.line("STRAND", [from, to]);
    drawSpanLength(desk, spanId);
  }
  for (const cableId of plant.all("cable")) drawCable(desk, cableId);
}

function drawSpanLength(desk: ModelDesk, spanId: string): void {
  const { plant } = desk;
  const { lengthM } = plant.rowOf("span", spanId);
  const lines: LabelLine[] = [
    { text: formatLength(lengthM, plant.settings().unitSystem, "span"), face: "narrow", heightMm: 2 },
  ];
  const { width, height } = labelSizeMm(lines);
  if (lengthM / groundPerMmM < width + 6) return;
  const along = spanBearingRad(plant, spanId);
  desk.label(2, "SPAN", lines, pointOnSpan(plant, spanId, lengthM / 2), (at) =>
    [0, 8, -8, 16, -16].flatMap((alongMm, rank) =>
      [1, -1].map((side, below) => ({
        centre: shifted(at, readableRad(along), alongMm, side * (height / 2 + 1)),
        turnRad: readableRad(along),
        cost: rank * 0.4 + below * 1.5,
      })),
    ),
  );
}

/** A cable as one line through its poles; where its way is broken, a line for each piece. */
function drawCable(desk: ModelDesk, cableId: string): void {
  const { plant } = desk;
  const { name, cableTypeId } = plant.rowOf("cable", cableId);
  const pieces: string[][] = [];
  for (const { inPoleId, outPoleId } of cablePath(plant, cableId).steps) {
    const last = pieces.at(-1);
    if (last?.at(-1) === inPoleId) last.push(outPoleId);
    else pieces.push([inPoleId, outPoleId]);
  }
  const poleAt = (poleId: string): Point => plant.rowOf("pole", poleId);
  for (const piece of pieces) desk.line("CABLE", piece.map(poleAt));
  const [first] = cablePath(plant, cableId).steps;
  if (!first) return;
  const lines: LabelLine[] = [
    { text: `${name}: ${plant.rowOf("cableType", cableTypeId).name}`, face: "narrowBold", heightMm: 2 },
  ];
  const { width, height } = labelSizeMm(lines);
  const row = cablesInSpan(plant, first.spanId).indexOf(cableId);
  const middle = pointOnSpan(plant, first.spanId, first.lengthM * 0.5);
  desk.label(3, "CABLE", lines, middle, (at) => roundCandidates(at, width, height, 2 + row * 2.5));
}

/** Poles with their tags, a bar for each other party, and their guys out to the anchors. */
export function drawModelPoles(desk: ModelDesk): void {
  const { plant } = desk;
  const system = plant.settings().unitSystem;
  for (const poleId of plant.all("pole")) {
    const pole = plant.rowOf("pole", poleId);
    const others = plant
      .where("attachment", "poleId", poleId)
      .map((id) => plant.rowOf("attachment", id))
      .filter((one) => one.kind !== "ourStrand");
    desk.symbol("POLE", poleBlock(new Set(others.map((one) => one.owner)).size), pole, 0);
    const facts = [
      ...(pole.poleClass === "" ? [] : [`class ${pole.poleClass}`]),
      ...(pole.aboveGroundM === null ? [] : [formatLength(pole.aboveGroundM, system, "span")]),
    ];
    const lines: LabelLine[] = [
      { text: pole.tag, face: "narrowBold", heightMm: 2.4 },
      ...(facts.length === 0 ? [] : [{ text: facts.join(", "), face: "narrow" as const, heightMm: 2 }]),
    ];
    const { width, height } = labelSizeMm(lines);
    desk.label(1, "POLE", lines, pole, (at) => roundCandidates(at, width, height, 3.4));
    for (const guyId of plant.where("guy", "poleId", poleId)) drawGuy(desk, guyId, pole);
  }
}

function drawGuy(desk: ModelDesk, guyId: string, pole: Point): void {
  const { directionRad, leadM } = desk.plant.rowOf("guy", guyId);
  const anchor = {
    eastM: pole.eastM + leadM * Math.cos(directionRad),
    northM: pole.northM + leadM * Math.sin(directionRad),
  };
  desk.line("GUY", [pole, anchor]);
  desk.symbol("GUY", anchorBlock(), anchor, directionRad);
  const text = `lead ${formatLength(leadM, desk.plant.settings().unitSystem, "height")}`;
  const lines: LabelLine[] = [{ text, face: "narrow", heightMm: 2 }];
  const { width, height } = labelSizeMm(lines);
  desk.label(4, "GUY", lines, anchor, (at) => roundCandidates(at, width, height, 1.4));
}
