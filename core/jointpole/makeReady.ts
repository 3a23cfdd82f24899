import { defineQuery, type Plant } from "../plant/plant.ts";
import { isCommunication } from "./apart.ts";
import { attachmentRange } from "./attachmentRange.ts";
import { noiseM } from "./leastPerShare.ts";
import { leastPlan, type Plan } from "./planMoves.ts";
import { type PoleScene, poleScene } from "./poleScene.ts";
import type { PoleWire } from "./poleWires.ts";
import { nearestWholeHeightM } from "./wholeHeight.ts";

/** An attachment of another party at another height on its pole. */
type Move = {
  readonly attachmentId: string;
  readonly fromM: number;
  readonly toM: number;
  /** True for supply and neutral: only their owner may move them, by rules that are not in the clearance set. */
  readonly ownerOnly: boolean;
};

/** Who would move where, so that our strand has a place. */
export type MovePlan = {
  readonly moves: readonly Move[];
  readonly ourHeightM: number;
  /** All moves of others together, m. */
  readonly totalM: number;
};

/** What must be done to a pole before our strand satisfies everything on it. */
export type MakeReady =
  | { readonly kind: "nothing" }
  /** No one else has to move. */
  | { readonly kind: "oursAlone"; readonly ourHeightM: number }
  | {
      readonly kind: "moves";
      readonly best: MovePlan;
      /** The next best plan with as many moves; null where there is no other. */
      readonly next: MovePlan | null;
    }
  | { readonly kind: "none"; readonly why: string }
  | { readonly kind: "unknown"; readonly why: string };

/** More attachments than this are not moved in one plan: the pole is full, and a taller one is the answer. */
const mostMoves = 3;

/**
 * The cheapest moves that give our strand a place on a pole. Fewest attachments of others first, then the least distance in all: the
 * company's standards have no price of a move. Communication first; supply and neutral only where no move of communication will do.
 *
 * Every moved attachment keeps apart from all that stay and all that move with it, at the pole and in our spans beside it, stays under
 * the pole's top, and communication clears what it passes over by the limits of ours at its measured or assumed sag. Neighbouring poles
 * keep their heights. Spans without strand of ours are not looked at; supply conductors keep their order and the spacing `apart.ts` takes for them.
 *
 * Exact on whole inches or centimetres (`planMoves.ts`), for up to three moved attachments.
 */
export const makeReady = defineQuery("make-ready", (plant, poleId): MakeReady => {
  const range = attachmentRange(plant, poleId);
  if (range.kind === "unknown") return range;
  const { heightM } = range.present;
  if (range.free.some(({ fromM, toM }) => heightM > fromM - noiseM && heightM < toM + noiseM))
    return { kind: "nothing" };
  const ourHeightM = nearestWholeHeightM(range.free, heightM, plant.settings().unitSystem);
  if (ourHeightM !== null) return { kind: "oursAlone", ourHeightM };
  const scene = poleScene(plant, poleId);
  const communication = scene.others.filter(isCommunication);
  return (
    fewestMoves(scene, communication, () => true) ??
    fewestMoves(scene, scene.others, (moved) => !moved.every(isCommunication)) ?? {
      kind: "none",
      why: whyNone(plant, poleId),
    }
  );
});

function fewestMoves(
  scene: PoleScene,
  movable: readonly PoleWire[],
  isAsked: (moved: readonly PoleWire[]) => boolean,
): MakeReady | null {
  for (let count = 1; count <= Math.min(mostMoves, movable.length); count += 1) {
    const plans = choices(movable, count)
      .filter(isAsked)
      .flatMap((moved) => leastPlan(scene, moved) ?? [])
      .sort((a, b) => a.totalM - b.totalM);
    const [best, next] = plans;
    if (best) return { kind: "moves", best: told(best), next: next ? told(next) : null };
  }
  return null;
}

function told({ moved, ourHeightM, totalM }: Plan): MovePlan {
  const moves = moved.flatMap(({ wire, toM }): Move[] =>
    wire.attachment
      ? [{ attachmentId: wire.attachment.id, fromM: wire.heightM, toM, ownerOnly: !isCommunication(wire) }]
      : [],
  );
  return { moves, ourHeightM, totalM };
}

function whyNone(plant: Plant, poleId: string): string {
  return `No move of up to ${mostMoves} attachments gives our strand a place on pole ${plant.rowOf("pole", poleId).tag} while the poles beside it stay as they are.`;
}

/** Every way to choose some of several things. */
function choices<T>(things: readonly T[], count: number): readonly (readonly T[])[] {
  if (count === 0) return [[]];
  return things.flatMap((thing, index) => choices(things.slice(index + 1), count - 1).map((rest) => [thing, ...rest]));
}
