import type { Module, Problem } from "../placement/problem.ts";
import type { Answer } from "./answer.ts";

type Id = string | number;
type FacilityInput = { readonly id: Id } & ({ readonly models: readonly Module[] } | Module);
type CustomerInput = { readonly id: Id; readonly demand: number };
type ArcInput = readonly [customerId: Id, facilityId: Id, cost: number];

/**
 * A placement request by names as a problem by numbers.
 *
 * Capacities are cut to whole ports; of two arcs between the same two the cheaper counts.
 *
 * @returns a fault where an id stands twice or an arc names one that is not there
 */
export function placementProblem(
  facilities: readonly FacilityInput[],
  customers: readonly CustomerInput[],
  arcs: readonly ArcInput[],
): Answer<Problem> {
  const pointOf = numbered(facilities, "facilities");
  if (!pointOf.ok) return pointOf;
  const unitOf = numbered(customers, "customers");
  if (!unitOf.ok) return unitOf;
  const reach = customers.map(() => new Map<number, number>());
  for (const [index, [customerId, facilityId, cost]] of arcs.entries()) {
    const unit = unitOf.value.get(String(customerId));
    const point = pointOf.value.get(String(facilityId));
    if (unit === undefined) return unknown(`arcs[${index}][0]`, customerId, "customers");
    if (point === undefined) return unknown(`arcs[${index}][1]`, facilityId, "facilities");
    const own = reach[unit];
    own?.set(point, Math.min(cost, own.get(point) ?? cost));
  }
  const sorted = reach.map((own) => [...own].sort(([a], [b]) => a - b));
  const firstArc = new Int32Array(customers.length + 1);
  sorted.forEach((own, unit) => {
    firstArc[unit + 1] = (firstArc[unit] ?? 0) + own.length;
  });
  return {
    ok: true,
    value: {
      points: facilities.map((one) => ({ modules: usefulModules("models" in one ? one.models : [one]) })),
      demand: Int32Array.from(customers, (one) => one.demand),
      firstArc,
      arcPoint: Int32Array.from(sorted.flatMap((own) => own.map(([point]) => point))),
      arcCost: Float64Array.from(sorted.flatMap((own) => own.map(([, cost]) => cost))),
    },
  };
}

/** By growing capacity, without any that a larger one undercuts. */
function usefulModules(models: readonly Module[]): Module[] {
  const useful: Module[] = [];
  const bySize = models
    .map(({ capacity, cost }) => ({ capacity: Math.floor(capacity), cost }))
    .sort((a, b) => b.capacity - a.capacity || a.cost - b.cost);
  for (const one of bySize) {
    const larger = useful[0];
    if (one.capacity >= 1 && (larger === undefined || (one.cost < larger.cost && one.capacity < larger.capacity)))
      useful.unshift(one);
  }
  return useful;
}

function numbered(rows: readonly { readonly id: Id }[], field: string): Answer<ReadonlyMap<string, number>> {
  const numbers = new Map<string, number>();
  for (const [index, { id }] of rows.entries()) {
    if (numbers.has(String(id)))
      return {
        ok: false,
        fault: {
          code: "repeated-id",
          what: `The id "${id}" stands twice in ${field}.`,
          where: `${field}[${index}].id`,
          mend: "Give each an id of its own.",
        },
      };
    numbers.set(String(id), index);
  }
  return { ok: true, value: numbers };
}

function unknown(where: string, id: Id, field: string): Answer<never> {
  return {
    ok: false,
    fault: {
      code: "unknown-id",
      what: `${where} names "${id}", which is not among the ${field}.`,
      where,
      mend: `Name one of the ${field}, or leave the arc out.`,
    },
  };
}
