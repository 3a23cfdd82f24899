import type { Plant } from "../plant/plant.ts";
import { portLight, splitterOfPort } from "../plant/portLight.ts";
import { catalogueBasis } from "../rules/rule.ts";
import { formatLossDb } from "../units/formatLossDb.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import type { ExplainedInput, Explanation, NoExplanation } from "./explanation.ts";
import { lengthInput, lossInput, plainInput } from "./inputs.ts";

/** Loss of light from the hub's output to the living unit, one way. */
export function explainLight(
  plant: Plant,
  dropId: string,
  way: "up" | "down",
  units: UnitSystem,
): Explanation | NoExplanation {
  const drop = plant.rowOf("drop", dropId);
  const title = `Loss of light on the way ${way}, ${plant.rowOf("livingUnit", drop.livingUnitId).address}`;
  const light = portLight(plant, dropId);
  const splitterId = splitterOfPort(plant, drop);
  if (light.kind === "unknown" || splitterId === null)
    return { kind: "unknown", title, why: light.kind === "unknown" ? light.why : "No splitter leg reaches the port." };
  const opticalClass = plant.rowOf("opticalClass", light.opticalClassId);
  const value = way === "up" ? light.upDb : light.downDb;
  const { marginDb } = plant.settings();
  return {
    kind: "known",
    title,
    words:
      "Loss ahead of the route, fiber and drop by their length, every splice and connection, and the splitter at its largest loss.",
    formula: `U + F · k / 1000 + d · kd / 1000 + ns · s + nc · c + S${light.tapCount > 0 ? " + T" : ""}`,
    inputs: lightInputs(plant, { dropId, splitterId, way, units, light }),
    result: { symbol: "loss", value, unit: "dB", text: formatLossDb(value) },
    limit: {
      words: `Largest loss of ${opticalClass.system} ${opticalClass.name}; the company keeps ${formatLossDb(marginDb)} of it for repairs`,
      value: opticalClass.maxLossDb,
      text: formatLossDb(opticalClass.maxLossDb),
      basis: catalogueBasis(opticalClass),
    },
    source: "sum of kilometres times loss per kilometre, and of the losses at points",
    assumed: [
      `The class also asks for no less than ${formatLossDb(opticalClass.minLossDb)}, or the receiver is overloaded.`,
    ],
  };
}

type Lit = {
  readonly dropId: string;
  readonly splitterId: string;
  readonly way: "up" | "down";
  readonly units: UnitSystem;
  readonly light: Extract<ReturnType<typeof portLight>, { kind: "known" }>;
};

function lightInputs(plant: Plant, { dropId, splitterId, way, units, light }: Lit): ExplainedInput[] {
  const { id: settings, spliceLossDb, connectionLossDb } = plant.settings();
  const feed = plant.rowOf("feed", light.feedId);
  const opticalClass = plant.rowOf("opticalClass", light.opticalClassId);
  const dropType = plant.rowOf("dropType", plant.rowOf("drop", dropId).dropTypeId);
  const splitterType = plant.rowOf("splitterType", plant.rowOf("splitter", splitterId).splitterTypeId);
  const { cableId } = plant.rowOf("terminal", plant.rowOf("drop", dropId).terminalId);
  return [
    lossInput(["U", "loss ahead of the route"], feed.upstreamLossDb, ["feed", feed.id]),
    lengthInput(["F", "fiber of the route, sag and coils in it"], light.fiberM, [units, "span"], ["cable", cableId]),
    plainInput(
      ["k", `loss of the fiber on the way ${way}`],
      way === "up" ? opticalClass.upDbPerKm : opticalClass.downDbPerKm,
      "dB/km",
      ["opticalClass", opticalClass.id],
    ),
    lengthInput(["d", "drop cable to cut"], light.dropM, [units, "drop"], ["drop", dropId]),
    plainInput(["kd", "loss of the drop cable"], dropType.attenuationDbPerKm, "dB/km", ["dropType", dropType.id]),
    plainInput(["ns", "splices"], light.spliceCount, "", ["cable", cableId]),
    lossInput(["s", "loss of a splice"], spliceLossDb, ["settings", settings]),
    plainInput(["nc", "connections from the splitter on"], light.connectionCount, "", null),
    lossInput(["c", "loss of a connection"], connectionLossDb, ["settings", settings]),
    lossInput(["S", `largest loss of splitter ${splitterType.name}`], splitterType.maxLossDb, [
      "splitterType",
      splitterType.id,
    ]),
    ...(light.tapCount > 0
      ? [lossInput(["T", "taps of other terminals on the way"], light.tapDb, ["cable", cableId])]
      : []),
  ];
}
