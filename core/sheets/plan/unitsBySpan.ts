import { type Point, planeDistanceM, spansAtPole } from "../../plant/geometry.ts";
import type { Plant } from "../../plant/plant.ts";
import { byName, byText } from "../../plant/sorting.ts";

/** Living units farther from every pole than this are drawn on no strip, m. */
const farthestM = 200;
const cellM = 50;

/** A living unit and where along its span it belongs, m from the span's first pole. */
export type UnitAlong = { readonly id: string; readonly offsetM: number };

/** Living units by the span they are drawn with: that of their terminal, or the nearest one where none serves them. */
export function unitsBySpan(plant: Plant): ReadonlyMap<string, readonly UnitAlong[]> {
  const spans = new Map<string, UnitAlong[]>();
  const nearestPole = poleFinder(plant);
  const units = [...plant.route().livingUnit.values()].sort(
    (a, b) => byName(a.address, b.address) || byText(a.id, b.id),
  );
  for (const unit of units) {
    const [dropId] = plant.where("drop", "livingUnitId", unit.id);
    const place = dropId === undefined ? nearestSpan(plant, nearestPole(unit), unit) : servingPlace(plant, dropId);
    if (place === null) continue;
    const one = { id: unit.id, offsetM: place.offsetM };
    const list = spans.get(place.spanId);
    if (list) list.push(one);
    else spans.set(place.spanId, [one]);
  }
  return spans;
}

type SpanPlace = { readonly spanId: string; readonly offsetM: number };

function servingPlace(plant: Plant, dropId: string): SpanPlace {
  return plant.rowOf("terminal", plant.rowOf("drop", dropId).terminalId);
}

function nearestSpan(plant: Plant, poleId: string | null, unit: Point): SpanPlace | null {
  if (poleId === null) return null;
  const near = spansAtPole(plant, poleId).map((id) => {
    const span = plant.rowOf("span", id);
    const [a, b] = [plant.rowOf("pole", span.fromPoleId), plant.rowOf("pole", span.toPoleId)];
    const frac = footFrac(unit, a, b);
    const foot = { eastM: a.eastM + (b.eastM - a.eastM) * frac, northM: a.northM + (b.northM - a.northM) * frac };
    return { spanId: id, offsetM: frac * span.lengthM, farM: planeDistanceM(unit, foot) };
  });
  return near.sort((a, b) => a.farM - b.farM || byText(a.spanId, b.spanId))[0] ?? null;
}

/** Where the point of a line nearest to another point lies, as a part of the line. */
function footFrac(point: Point, a: Point, b: Point): number {
  const [east, north] = [b.eastM - a.eastM, b.northM - a.northM];
  const square = east * east + north * north;
  if (square === 0) return 0;
  const part = ((point.eastM - a.eastM) * east + (point.northM - a.northM) * north) / square;
  return Math.min(1, Math.max(0, part));
}

function poleFinder(plant: Plant): (point: Point) => string | null {
  const cells = new Map<string, string[]>();
  for (const pole of plant.route().pole.values()) {
    const key = `${Math.floor(pole.eastM / cellM)} ${Math.floor(pole.northM / cellM)}`;
    cells.set(key, [...(cells.get(key) ?? []), pole.id]);
  }
  return (point) => {
    const [column, row] = [Math.floor(point.eastM / cellM), Math.floor(point.northM / cellM)];
    for (let ring = 1; ring * cellM <= farthestM; ring += 1) {
      const found: { readonly id: string; readonly farM: number }[] = [];
      for (let x = column - ring; x <= column + ring; x += 1) {
        for (let y = row - ring; y <= row + ring; y += 1) {
          for (const id of cells.get(`${x} ${y}`) ?? [])
            found.push({ id, farM: planeDistanceM(point, plant.rowOf("pole", id)) });
        }
      }
      const best = found.sort((a, b) => a.farM - b.farM || byText(a.id, b.id))[0];
      if (best && best.farM <= ring * cellM) return best.id;
    }
    return null;
  };
}
