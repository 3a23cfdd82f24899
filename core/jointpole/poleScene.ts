import type { Plant } from "../plant/plant.ts";
import { apartM } from "./apart.ts";
import { type Barred, freeHeights } from "./barred.ts";
import { otherWires, ourWire, type PoleWire } from "./poleWires.ts";
import { type Stretch, tapeStepM, wholeStretches } from "./wholeHeight.ts";
import { barredAlone } from "./wireBounds.ts";

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

/** What a distance may be off a whole count by and still be it, in counts. */
const noiseCount = 1e-9;

/** A pole as a plan of moves sees it; each pair of wires is solved once. */
export function poleScene(plant: Plant, poleId: string): PoleScene {
  const stepM = tapeStepM(plant.settings().unitSystem);
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
      return wholeStretches(freeHeights([...aloneOf(wire), ...beside]), stepM);
    },
  };
}
