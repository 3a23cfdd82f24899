import { groundAtM, groundLine } from "../plant/groundLine.ts";
import type { Plant } from "../plant/plant.ts";
import type { Barred, Cause } from "./barred.ts";
import { barredByDrops } from "./barredByDrops.ts";
import { barredByPole } from "./barredByPole.ts";
import { barredBySurfaces, spanPassages, tooLow } from "./barredBySurfaces.ts";
import type { PoleWire } from "./poleWires.ts";
import { spansAt } from "./spanAtPole.ts";

/** Heights that a wire may not have on its pole whatever the others do: too low over what it passes, or above the pole's top. */
export function barredAlone(
  plant: Plant,
  poleId: string,
  wire: PoleWire,
): readonly Pick<Barred, "aboveM" | "belowM">[] {
  if (wire.party === "ours")
    return [
      ...barredBySurfaces(plant, poleId).barred,
      ...barredByDrops(plant, poleId).barred,
      ...barredByPole(plant, poleId),
    ];
  const { aboveGroundM } = plant.rowOf("pole", poleId);
  const overTop = aboveGroundM === null ? [] : [{ aboveM: aboveGroundM, belowM: Number.POSITIVE_INFINITY }];
  return [...overTop, ...(wire.party === "communication" ? tooLowForTheirs(plant, poleId, wire) : [])];
}

/** Their communication is held to the same clearances as ours, at the one sag that is known or assumed of it. */
function tooLowForTheirs(plant: Plant, poleId: string, wire: PoleWire): readonly Barred[] {
  return spansAt(plant, poleId).flatMap((span): readonly Barred[] => {
    const end = wire.spans.get(span.spanId);
    const ground = groundLine(plant, span.spanId);
    if (!end || ground.kind === "unknown") return [];
    const [firstM, lastM] = [groundAtM(ground, 0), groundAtM(ground, span.lengthM)];
    const [hereM, farM] = span.shareAt(0) === 1 ? [firstM, lastM] : [lastM, firstM];
    const undersideM = (offsetM: number) => {
      const share = span.shareAt(offsetM);
      return (hereM + wire.heightM) * share + (farM + end.farM) * (1 - share) - 4 * end.sagM * share * (1 - share);
    };
    const mayPassUnder = ({ table, id }: Cause["against"]) =>
      table === "structure" && plant.rowOf("structure", id).bottomM !== null;
    const passed = spanPassages(plant, span).filter(({ cause }) => !mayPassUnder(cause.against));
    return passed.flatMap((over) =>
      tooLow(plant, {
        ...over,
        hung: { undersideM, cornersM: [], strandAssumed: false },
        heightM: wire.heightM,
        shareAt: span.shareAt,
        bendM: () => 4 * end.sagM,
      }),
    );
  });
}
