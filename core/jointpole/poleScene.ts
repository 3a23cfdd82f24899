import type { Plant } from "../plant/plant.ts";
import { metresPerInch } from "../units/constants.ts";
import { apartM } from "./apart.ts";
import { type Barred, freeHeights } from "./barred.ts";
import { otherWires, ourWire, type PoleWire } from "./poleWires.ts";
import { barredAlone } from "./wireBounds.ts";

/** Whole counts of a tape between which a wire may be attached, both included. */
export type Stretch = { readonly least: number; readonly most: number };

/** Everything on one pole that a plan of moves asks about, in whole inches or centimetres: people move things by the tape. */
export type PoleScene = {
  readonly ours: PoleWire;
  readonly others: readonly PoleWire[];
  readonly stepM: number;
  /** How many counts over another a wire must be attached; Infinity where it may not be the upper one. */
  readonly apart: (upper: PoleWire, lower: PoleWire) => number;
  /** Where a wire may be attached while some others keep their heights. */
  readonly stretches: (wire: PoleWire, held: readonly PoleWire[]) => readonly Stretch[];
};

const noiseCount = 1e-9;

/** A pole as a plan of moves sees it; each pair of wires is solved once. */
export function poleScene(plant: Plant, poleId: string): PoleScene {
  const stepM = plant.settings().unitSystem === "us" ? metresPerInch : 0.01;
  const pairs = new Map<PoleWire, Map<PoleWire, number>>();
  const solvedM = (upper: PoleWire, lower: PoleWire): number => {
    const known = pairs.get(upper) ?? new Map<PoleWire, number>();
    pairs.set(upper, known);
    const apart = known.get(lower) ?? apartM(plant, poleId, upper, lower);
    known.set(lower, apart);
    return apart;
  };
  const alone = new Map<PoleWire, readonly Barred<null>[]>();
  const aloneOf = (wire: PoleWire): readonly Barred<null>[] => {
    const bars = alone.get(wire) ?? barredAlone(plant, poleId, wire).map((one) => ({ ...one, cause: null }));
    alone.set(wire, bars);
    return bars;
  };
  return {
    ours: ourWire(plant, poleId),
    others: otherWires(plant, poleId),
    stepM,
    apart: (upper, lower) => Math.ceil(solvedM(upper, lower) / stepM - noiseCount),
    stretches(wire, held) {
      const beside = held.map((one) => ({
        aboveM: one.heightM - solvedM(one, wire),
        belowM: one.heightM + solvedM(wire, one),
        cause: null,
      }));
      return freeHeights([...aloneOf(wire), ...beside])
        .map(({ fromM, toM }) => ({
          least: Math.max(Math.ceil(fromM / stepM - noiseCount), 1),
          most: Math.floor(toM / stepM + noiseCount),
        }))
        .filter(({ least, most }) => least <= most);
    },
  };
}
