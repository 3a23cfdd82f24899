import { countedKinds } from "../../core/edits/countedKinds.ts";
import type { Step } from "../../core/edits/runSteps.ts";
import type { TableName } from "../../core/model/tables.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { metresPerInch } from "../../core/units/constants.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import { type RefKey, splitRef } from "../app/ref.ts";
import { type DrawnAs, placesOf } from "../canvas/places.ts";
import { toolWords } from "./words.ts";

type NudgedRow = { readonly table: TableName; readonly id: string };

/** Tables whose rows lie at a distance along a span. */
const alongStrand = ["terminal", "slack", "crossing", "closure", "structure", "groundPoint"] as const;

function isAlongStrand<R extends NudgedRow>(row: R): row is R & { readonly table: (typeof alongStrand)[number] } {
  return alongStrand.some((one) => one === row.table);
}

/** What arrows move together: things hung on the strand go along it, poles and living units over the ground. */
export type Nudged = {
  readonly rows: readonly NudgedRow[];
  readonly isOnGround: boolean;
  /** Tells the same things from others. */
  readonly key: string;
};

type NudgeAsked =
  | { readonly ok: true; readonly label: string; readonly steps: readonly Step[] }
  | { readonly ok: false; readonly what: string };

const stepsM = { us: metresPerInch, metric: 0.01 } as const;

/** Steeper than this against the arrow, a strand does not run its way; part of the chord. */
const leastAlongFrac = 0.2;

/** One step of a nudge, m: an inch or a centimetre. */
export function nudgeStepM(units: UnitSystem): number {
  return stepsM[units];
}

/**
 * What arrows would move of a selection; null where they walk instead.
 *
 * A pole alone is walked from and not nudged, since a slip would falsify a survey. Where poles are among several things, what
 * hangs beside them keeps its distance from them, so that only poles and living units are moved themselves.
 */
export function nudgedOf(selection: readonly RefKey[]): Nudged | null {
  const rows = selection.map(splitRef);
  const onGround = rows.filter((row) => row.table === "pole" || row.table === "livingUnit");
  const hung = rows.filter(isAlongStrand);
  const isOnGround = onGround.length > 0 && rows.length > 1;
  const moved = isOnGround ? onGround : onGround.length > 0 ? [] : hung;
  if (moved.length === 0) return null;
  return { rows: moved, isOnGround, key: moved.map((row) => `${row.table}/${row.id}`).join(" ") };
}

/**
 * The steps that nudge things.
 *
 * @param byM  to the right and up the page, m
 */
export function nudgeSteps(
  plant: Plant,
  drawnAs: DrawnAs,
  { rows, isOnGround }: Nudged,
  byM: readonly [right: number, up: number],
): NudgeAsked {
  const label = `Move ${countedKinds(rows)}`;
  if (isOnGround) return { ok: true, label, steps: rows.map((row) => groundStep(plant, row, byM)) };
  const steps: Step[] = [];
  for (const row of withoutCoilsOf(plant, rows)) {
    const alongM = alongStrandM(plant, drawnAs, row, byM);
    if (alongM === 0) continue;
    const step = strandStep(plant, row, alongM);
    if (!step) return { ok: false, what: toolWords.strandEnds };
    steps.push(step);
  }
  return steps.length === 0 ? { ok: false, what: toolWords.acrossStrand } : { ok: true, label, steps };
}

/** A terminal's own coil goes with it. */
function withoutCoilsOf(plant: Plant, rows: readonly NudgedRow[]): readonly NudgedRow[] {
  const terminalIds = new Set(rows.flatMap((row) => (row.table === "terminal" ? [row.id] : [])));
  return rows.filter(({ table, id }) => {
    const ownerId = table === "slack" ? plant.rowOf("slack", id).terminalId : null;
    return ownerId === null || !terminalIds.has(ownerId);
  });
}

function groundStep(plant: Plant, { table, id }: NudgedRow, [right, up]: readonly [number, number]): Step {
  const { eastM, northM } = table === "pole" ? plant.rowOf("pole", id) : plant.rowOf("livingUnit", id);
  const place = { eastM: eastM + right, northM: northM + up };
  if (table === "pole") return { command: "pole.move", input: { poleId: id, ...place } };
  return { command: "row.set", input: { table, id, values: place } };
}

/** How far a way over the page leads along the strand a thing hangs on, from the span's first pole on, m; 0 across it. */
function alongStrandM(plant: Plant, drawnAs: DrawnAs, row: NudgedRow, [right, up]: readonly [number, number]): number {
  const { from, to } = placesOf(plant, drawnAs).spanEnds(hungPlace(plant, row).spanId);
  const [east, north] = [to.eastM - from.eastM, to.northM - from.northM];
  const chordM = Math.hypot(east, north);
  // each arrow moves by its whole step, however the strand runs
  const share = (byM: number, run: number): number =>
    Math.abs(run) < chordM * leastAlongFrac ? 0 : byM * Math.sign(run);
  return share(right, east) + share(up, north);
}

function strandStep(plant: Plant, row: NudgedRow, alongM: number): Step | null {
  const { spanId, offsetM: formerM } = hungPlace(plant, row);
  const offsetM = formerM + alongM;
  if (!(offsetM > 0 && offsetM < plant.rowOf("span", spanId).lengthM)) return null;
  if (row.table === "terminal") return { command: "terminal.move", input: { terminalId: row.id, spanId, offsetM } };
  if (row.table === "slack") return { command: "slack.move", input: { slackId: row.id, spanId, offsetM } };
  if (row.table === "crossing") return { command: "crossing.set", input: { crossingId: row.id, values: { offsetM } } };
  return { command: "row.set", input: { table: row.table, id: row.id, values: { offsetM } } };
}

function hungPlace(plant: Plant, row: NudgedRow): { readonly spanId: string; readonly offsetM: number } {
  if (!isAlongStrand(row)) throw new Error(`does not lie along a span: ${row.table}`);
  return plant.rowOf(row.table, row.id);
}
