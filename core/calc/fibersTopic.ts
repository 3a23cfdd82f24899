import { z } from "zod";
import { allocateFibers, tubesNeeded } from "../fiber/allocateFibers.ts";
import { fiberPlace } from "../fiber/colourCode.ts";
import { freeByTube, type TubedCable } from "../fiber/tubes.ts";
import type { Answer } from "./answer.ts";
import { defineSearchTopic } from "./topic.ts";

const countFromOne = z.int().min(1);
const count = z.int().min(0);

const demand = z.strictObject({
  name: z.string().describe("what the group is called in the reply").optional(),
  fiberCount: count.describe("adjacent fibers it needs"),
  pinned: z.array(countFromOne).describe("fibers it keeps, as many as fiberCount").optional(),
});

const cable = z.strictObject({
  fiberCount: countFromOne.max(3456).describe("fibers of the cable"),
  fibersPerTube: countFromOne.describe("fibers of a tube; the last one may have fewer"),
  spareFiberPerTubeCount: count.describe("last fibers of each tube that stay free; 0 where left out").optional(),
  taken: z.array(countFromOne).describe("fibers in use already").optional(),
});

const givenFiber = z.strictObject({
  fiber: countFromOne.describe("number of the fiber in its cable"),
  tube: countFromOne,
  tubeColour: z.string(),
  fiberInTube: countFromOne,
  fiberColour: z.string(),
});

export const fibersTopic = defineSearchTopic({
  id: "fibers",
  title: "Fibers of a cable for groups in the order in which it is opened",
  request: z.strictObject({
    demands: z.array(demand).min(1).describe("from the cable's far end, so that no fiber is cut before it is used"),
    cable,
    cableSizes: z
      .array(countFromOne)
      .describe("fibers of the cables to be had; a cable too small is answered with the smallest of them that fits")
      .optional(),
  }),
  reply: z.strictObject({
    allocation: z.array(z.strictObject({ name: z.string(), fibers: z.array(givenFiber) })),
    secondTubeCount: count.describe("tubes opened at a group beyond its first one"),
    breakCount: count.describe("neighbours of a group in one tube that are not adjacent"),
    tubeCount: count.describe("tubes that hold a given, kept or taken fiber"),
    skippedCount: count.describe("free fibers below the highest given one that no group holds"),
  }),
  example: {
    demands: [{ name: "T-3", fiberCount: 4 }, { name: "T-2", fiberCount: 4 }, { fiberCount: 4 }],
    cable: { fiberCount: 24, fibersPerTube: 12, spareFiberPerTubeCount: 2 },
    cableSizes: [12, 24, 48],
  },
  answer(request) {
    const { demands, cableSizes } = request;
    const { fiberCount, fibersPerTube, spareFiberPerTubeCount = 0, taken = [] } = request.cable;
    const pinned = demands.flatMap((one) => one.pinned ?? []);
    requirePinsFit(demands, [...taken, ...pinned], fiberCount);
    const held = new Set([...taken, ...pinned]);
    const tubed: TubedCable = { fiberCount, fibersPerTube, spareCount: spareFiberPerTubeCount, taken: held };
    const counts = demands.map((one) => (one.pinned ? 0 : one.fiberCount));
    const found = allocateFibers(tubed, counts);
    if (found === null) return tooSmall(tubed, counts, cableSizes ?? []);
    const { groups, ...cost } = found;
    const allocation = demands.map((one, index) => ({
      name: one.name ?? `group ${index + 1}`,
      fibers: (one.pinned?.toSorted((a, b) => a - b) ?? groups[index] ?? []).map((fiber) => ({
        fiber,
        ...fiberPlace(fiber, fibersPerTube),
      })),
    }));
    return { ok: true as const, value: { allocation, ...cost } };
  },
});

function requirePinsFit(demands: readonly z.infer<typeof demand>[], held: readonly number[], fiberCount: number): void {
  const odd = demands.findIndex((one) => one.pinned !== undefined && one.pinned.length !== one.fiberCount);
  if (odd !== -1) throw new RangeError(`demands[${odd}] must keep as many pinned fibers as its fiberCount`);
  const twice = held.find((fiber, index) => held.indexOf(fiber) !== index);
  if (twice !== undefined) throw new RangeError(`fiber ${twice} cannot be taken or pinned twice`);
  const beyond = held.find((fiber) => fiber > fiberCount);
  if (beyond !== undefined) throw new RangeError(`fiber ${beyond} lies beyond the cable's ${fiberCount}`);
}

function tooSmall(cable: TubedCable, counts: readonly number[], sizes: readonly number[]): Answer<never> {
  const asked = counts.reduce((sum, one) => sum + one, 0);
  const fits = sizes
    .toSorted((a, b) => a - b)
    .find((fiberCount) => allocateFibers({ ...cable, fiberCount }, counts) !== null);
  const tubes = tubesNeeded([...counts, cable.taken.size], cable.fibersPerTube, cable.spareCount);
  const mend =
    fits === undefined
      ? `Take a cable of ${tubes} tubes of ${cable.fibersPerTube} or ask for fewer.`
      : `The smallest cable that fits has ${fits} fibers.`;
  const what = `The cable has ${freeByTube(cable).flat().length} fibers to give and ${asked} are asked.`;
  return { ok: false, fault: { code: "cable-too-small", what, where: "cable", mend } };
}
