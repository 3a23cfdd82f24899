import type { Terminal } from "../../core/model/tables.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { hang, modelFace } from "../canvas/hungMarks.ts";
import type { terminalPlacePx } from "../canvas/hungPlace.ts";
import type { Scene } from "../canvas/scene.ts";
import type { ShownTrial } from "./shownTrial.ts";
import { whatIfWords as words } from "./whatIfWords.ts";

/** A terminal of a trial, or one that would go, where it hangs. */
export type TrialTerminal = Parameters<typeof terminalPlacePx>[0] & { readonly words: string };

/** A drop of a trial that runs otherwise than now: from a terminal of the trial to a house as it is drawn. */
type TrialDrop = { readonly from: TrialTerminal; readonly eastM: number; readonly northM: number };

/** A trial made ready for drawing. */
export type TrialMarks = {
  /** Over the strand, opposite to what hangs now, so that both are seen. */
  readonly ghosts: readonly TrialTerminal[];
  readonly gone: readonly TrialTerminal[];
  readonly drops: readonly TrialDrop[];
  readonly lost: readonly { readonly eastM: number; readonly northM: number }[];
};

/** Places what a trial has otherwise on the page as it is drawn. */
export function trialMarks(plant: Plant, scene: Scene, { difference }: ShownTrial): TrialMarks {
  const { hung, remodelled, gone, moved, lost } = difference;
  const mark = (one: Terminal, text: string): TrialTerminal => {
    const { rankCount, perRankCount } = modelFace(plant, one.terminalModelId);
    return { ...hang(plant, scene.spans, one.id, one.spanId, one.offsetM), rankCount, perRankCount, words: text };
  };
  const over = (one: TrialTerminal): TrialTerminal => {
    const { belowX, belowY } = one.frame;
    return { ...one, frame: { ...one.frame, belowX: -belowX, belowY: -belowY } };
  };
  const ports = ({ terminalModelId }: Terminal): number => plant.rowOf("terminalModel", terminalModelId).portCount;
  const ghostOf = new Map([
    ...hung.map((one) => [one.id, over(mark(one, words.hangs(ports(one))))] as const),
    ...remodelled.map((one) => [one.id, over(mark(one, words.becomes(ports(one))))] as const),
  ]);
  const houseOf = (unitId: string) => scene.houses.marks[scene.houses.positionOf.get(unitId) ?? -1];
  return {
    ghosts: [...ghostOf.values()],
    gone: gone.map((one) => mark(one, words.goes)),
    drops: moved.flatMap(({ livingUnitId, terminal }): readonly TrialDrop[] => {
      const house = houseOf(livingUnitId);
      if (!house) return [];
      return [{ from: ghostOf.get(terminal.id) ?? mark(terminal, ""), eastM: house.eastM, northM: house.northM }];
    }),
    lost: lost.flatMap((id) => houseOf(id) ?? []),
  };
}
