import type { Route } from "../model/route.ts";
import { settingsOf } from "../model/route.ts";
import type { Step } from "./runSteps.ts";

/** What is to be otherwise in a trial layout; what is left out stays as the route has it. */
export type Variant = {
  readonly sparePortCount?: number | undefined;
  readonly dropReachM?: number | undefined;
  readonly dropCostPerM?: number | undefined;
  /** Price of terminal models by id. */
  readonly modelCosts?: Readonly<Record<string, number>> | undefined;
  /** Models that may be hung; left out, all. */
  readonly modelIds?: readonly string[] | undefined;
};

/** The edits that make a route's standards and prices those of a variant; none for what is so already. */
export function variantSteps(route: Route, variant: Variant): Step[] {
  const settings = settingsOf(route);
  const { sparePortCount, dropReachM, dropCostPerM, modelCosts = {} } = variant;
  const values = {
    ...(sparePortCount !== undefined && sparePortCount !== settings.sparePortCount && { sparePortCount }),
    ...(dropReachM !== undefined && dropReachM !== settings.dropReachM && { dropReachM }),
  };
  const dropType = route.dropType.get(settings.dropTypeId);
  const prices = Object.entries(modelCosts).filter(([id, cost]) => route.terminalModel.get(id)?.cost !== cost);
  return [
    ...(Object.keys(values).length > 0 ? [{ command: "settings.set", input: { values } }] : []),
    ...(dropType && dropCostPerM !== undefined && dropCostPerM !== dropType.costPerM
      ? [priced("dropType", dropType.id, { costPerM: dropCostPerM })]
      : []),
    ...prices.map(([id, cost]) => priced("terminalModel", id, { cost })),
  ];
}

function priced(table: "dropType" | "terminalModel", id: string, values: object): Step {
  return { command: "catalogue.set", input: { table, id, values } };
}
