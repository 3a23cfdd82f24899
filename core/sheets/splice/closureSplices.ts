import type { FiberUse } from "../../model/tables.ts";
import { sheathToM, stationM } from "../../plant/cablePath.ts";
import { feedOfUse } from "../../plant/fiberTrace.ts";
import { tubeOf, usesOfCable } from "../../plant/fiberView.ts";
import type { Plant } from "../../plant/plant.ts";
import { formatLength } from "../../units/formatLength.ts";
import { colourWords, numberRanges } from "../jobCard/terminalFacts.ts";
import { figure } from "../paper/figure.ts";
import { stationText } from "../paper/quantityText.ts";
import type { TableRow } from "../paper/tableRow.ts";

/** The splices in a closure: which fiber of the cable it hangs on goes to which of the cables that begin there. */
export function closureRows(plant: Plant, closureId: string): readonly TableRow[] {
  const { cableId } = plant.rowOf("closure", closureId);
  const uses = usesOfCable(plant, cableId)
    .map((id) => plant.rowOf("fiberUse", id))
    .filter((one) => one.closureId === closureId);
  return [
    { group: placeWords(plant, closureId) },
    { note: tubeWords(plant, cableId, uses) },
    ...uses.map((use) => spliceRow(plant, use)),
    ...(uses.length === 0 ? [{ note: "No fiber is spliced here yet." }] : []),
    { note: "All other fibers pass through uncut, coiled in their tubes." },
    ...darkRows(plant, closureId, uses),
  ];
}

function placeWords(plant: Plant, closureId: string): string {
  const { name, cableId, spanId, offsetM } = plant.rowOf("closure", closureId);
  const system = plant.settings().unitSystem;
  const span = plant.rowOf("span", spanId);
  const isFirst = offsetM <= span.lengthM / 2;
  const [near, far] = isFirst ? [span.fromPoleId, span.toPoleId] : [span.toPoleId, span.fromPoleId];
  const fromPoleM = isFirst ? offsetM : span.lengthM - offsetM;
  const [station, sheath] = [stationM(plant, cableId, spanId, offsetM), sheathToM(plant, cableId, spanId, offsetM)];
  const tag = (id: string) => plant.rowOf("pole", id).tag;
  return [
    `${name} on ${plant.rowOf("cable", cableId).name}, ${formatLength(fromPoleM, system, "offset")} from pole ${tag(near)} towards ${tag(far)}`,
    ...(station === null ? [] : [`station ${stationText(station, system)}`]),
    ...(sheath === null ? [] : [`sheath mark ${formatLength(sheath, system, "span")} from the feed end`]),
  ].join("; ");
}

/** Which tubes of the cable are opened here and which stay closed. */
function tubeWords(plant: Plant, cableId: string, uses: readonly FiberUse[]): string {
  const { fiberCount, fibersPerTube } = plant.rowOf("cableType", plant.rowOf("cable", cableId).cableTypeId);
  const opened = [...new Set(uses.map((one) => tubeOf(plant, cableId, one.fiber).tube))].sort((a, b) => a - b);
  const closed = Array.from({ length: Math.ceil(fiberCount / fibersPerTube) }, (_, index) => index + 1).filter(
    (one) => !opened.includes(one),
  );
  const open = opened.map((tube) => `tube ${tube} ${colourWords(tube)}`).join(" and ");
  const rest =
    closed.length === 0 ? "" : ` Leave closed: ${closed.length === 1 ? "tube" : "tubes"} ${numberRanges(closed)}.`;
  return opened.length === 0 ? `Open no tube.${rest}` : `Open ${open}.${rest}`;
}

function spliceRow(plant: Plant, use: FiberUse): TableRow {
  const from = tubeOf(plant, use.cableId, use.fiber);
  const to =
    use.lateralCableId === null || use.lateralFiber === null
      ? null
      : {
          cableId: use.lateralCableId,
          fiber: use.lateralFiber,
          ...tubeOf(plant, use.lateralCableId, use.lateralFiber),
        };
  const feedId = use.purpose === "lateral" ? feedOfUse(plant, use.id) : null;
  const colours = ({ tube, place }: { readonly tube: number; readonly place: number }) => [
    `${tube}  ${colourWords(tube)}`,
    `${place}  ${colourWords(place)}`,
  ];
  return {
    cells: [
      plant.rowOf("cable", use.cableId).name,
      figure(use.fiber, 0),
      ...colours(from),
      ...(to
        ? [plant.rowOf("cable", to.cableId).name, figure(to.fiber, 0), ...colours(to)]
        : ["ends here, dead", "", "", ""]),
      feedId === null ? "" : plant.rowOf("feed", feedId).name,
      "",
      "",
      to ? "□" : "",
    ],
    chips: [from.tube, from.place, to?.tube ?? null, to?.place ?? null],
  };
}

/** Fibers of the cables that begin here which nothing is spliced to. */
function darkRows(plant: Plant, closureId: string, uses: readonly FiberUse[]): readonly TableRow[] {
  return plant.where("cable", "fromClosureId", closureId).flatMap((id) => {
    const { name, cableTypeId } = plant.rowOf("cable", id);
    const { fiberCount } = plant.rowOf("cableType", cableTypeId);
    const spliced = new Set(uses.flatMap((one) => (one.lateralCableId === id ? (one.lateralFiber ?? []) : [])));
    const dark = Array.from({ length: fiberCount }, (_, index) => index + 1).filter((one) => !spliced.has(one));
    if (dark.length === 0) return [];
    const which = `${dark.length === 1 ? "fiber" : "fibers"} ${numberRanges(dark)}`;
    return [{ note: `${name}, ${which}: not spliced; store in the tray, ends sealed.` }];
  });
}
