import type { Plant } from "../plant/plant.ts";
import { spanBundle } from "../plant/spanLoad.ts";
import { returnWaveS } from "../strand/returnWave.ts";
import { type StringingCell, stringingTable } from "../strand/stringingTable.ts";

/** Returns of the wave that a crew counts by stopwatch: enough that a tenth of a second hardly matters. */
export const returnCount = 10;

/** What the crew pulls a span to at one temperature. */
export type PulledSpan = StringingCell & { readonly returnsS: number };

/** The bare strand of a span at each temperature asked for, and its sag when the cable is lashed; or why nobody can tell. */
export type SpanStringing =
  | { readonly kind: "known"; readonly pulled: readonly PulledSpan[]; readonly finishedSagM: number }
  | { readonly kind: "unknown"; readonly why: string };

/**
 * Initial sag and tension of a span's bare strand, so that it has the section's finished sag once its cables are lashed. Each span by
 * itself, clamped at both poles, as the checks of the route take it; creep is left out.
 */
export function spanStringing(plant: Plant, spanId: string, temperaturesDegC: readonly number[]): SpanStringing {
  const { lengthM, strandSectionId } = plant.rowOf("span", spanId);
  const bundle = spanBundle(plant, spanId);
  if (strandSectionId === null || bundle === null) return { kind: "unknown", why: "no strand of ours" };
  const { stringingSagFrac, stringingDegC, strandTypeId } = plant.rowOf("strandSection", strandSectionId);
  if (!(stringingSagFrac > 0)) return { kind: "unknown", why: "no stringing sag" };
  const strand = plant.rowOf("strandType", strandTypeId);
  const table = stringingTable({
    spansM: [lengthM],
    temperaturesDegC,
    axialStiffnessN: strand.areaM2 * strand.modulusPa,
    expansionPerDegC: strand.expansionPerC,
    weightNPerM: strand.weightNPerM,
    limit: { weightNPerM: bundle.weightNPerM, temperatureDegC: stringingDegC, sagFrac: stringingSagFrac },
    poles: "clamped",
  });
  if (!table.ok) return { kind: "unknown", why: table.fault.what };
  const pulled = table.value.flat().map((cell) => ({ ...cell, returnsS: returnWaveS(cell.sagM, returnCount) }));
  return { kind: "known", pulled, finishedSagM: stringingSagFrac * lengthM };
}
