import { z } from "zod";
import { solvePlacement } from "../placement/solvePlacement.ts";
import { notNegative } from "./fields.ts";
import { placementProblem } from "./placementProblem.ts";
import { defineSearchTopic } from "./topic.ts";

const id = z.union([z.string(), z.number()]);
const wholeNumber = z.int().min(1);
/** Seconds a search may take where the request says nothing. */
const usualTimeLimitS = 10;

export const layoutTopic = defineSearchTopic({
  id: "layout",
  title: "Cheapest placement: which facilities to open and which serves each customer, with a proven bound",
  request: z.strictObject({
    facilities: z
      .array(
        z.union([
          z.strictObject({
            id: id.describe("name of the place"),
            capacity: notNegative("most demand it serves"),
            cost: notNegative("cost of opening it"),
          }),
          z.strictObject({
            id: id.describe("name of the place"),
            models: z
              .array(
                z.strictObject({ capacity: notNegative("most demand it serves"), cost: notNegative("cost of one") }),
              )
              .min(1)
              .describe("what may stand there, one at most; the cheapest that holds the load is paid"),
          }),
        ]),
      )
      .min(1)
      .describe("places, in order along the strand where there is one"),
    customers: z
      .array(z.strictObject({ id: id.describe("name of the customer"), demand: wholeNumber.describe("ports it asks") }))
      .describe("each is served whole, by one place"),
    arcs: z
      .array(z.tuple([id, id, z.number().nonnegative()]))
      .describe("customer, facility, cost of serving the one from the other; what is not listed may not be"),
    openExactly: wholeNumber.optional().describe("how many places are open; any number where left out"),
    seed: z.int().optional().describe("for searches that draw lots; same seed, same answer; 1 where left out"),
    timeLimitS: z.number().positive().optional().describe("s; 10 where left out"),
    gap: z
      .number()
      .min(0)
      .max(1)
      .optional()
      .describe("ends the search as soon as the gap is no larger; 0 where left out"),
  }),
  reply: z.strictObject({
    cost: z.number().describe("of facilities and arcs, without customers that cannot be served"),
    bound: z.number().describe("proven: no layout of the customers served costs less"),
    gap: z.number().describe("(cost - bound) / cost"),
    open: z.array(id).describe("facilities that serve somebody, in the order of the request"),
    assignment: z.record(z.string(), id).describe("by customer the facility that serves it"),
    status: z.enum(["optimal", "bounded", "infeasible"]),
    unserved: z.array(z.strictObject({ id, reason: z.string() })).optional(),
    seconds: z.number().describe("s the search took, 0 where no clock was at hand"),
  }),
  example: {
    facilities: [
      {
        id: "pole 1",
        models: [
          { capacity: 3, cost: 900 },
          { capacity: 7, cost: 1150 },
        ],
      },
      {
        id: "pole 2",
        models: [
          { capacity: 3, cost: 900 },
          { capacity: 7, cost: 1150 },
        ],
      },
    ],
    customers: [
      { id: "12 Mill Road", demand: 1 },
      { id: "14 Mill Road", demand: 2 },
    ],
    arcs: [
      ["12 Mill Road", "pole 1", 130],
      ["12 Mill Road", "pole 2", 180],
      ["14 Mill Road", "pole 2", 240],
    ],
  },
  answer({ facilities, customers, arcs, openExactly, seed = 1, timeLimitS = usualTimeLimitS, gap = 0 }, { clock }) {
    const startS = clock();
    const stated = placementProblem(facilities, customers, arcs);
    if (!stated.ok) return stated;
    const problem = openExactly === undefined ? stated.value : { ...stated.value, openExactly };
    const elapsedS = () => clock() - startS;
    const watch = { elapsedS, stopped: () => elapsedS() >= timeLimitS };
    const { pointOf, cost, bound, status, unserved } = solvePlacement(problem, watch, { gap, seed });
    const assignment: Record<string, string | number> = {};
    const open = new Set<number>();
    customers.forEach((customer, unit) => {
      const facility = facilities[pointOf[unit] ?? -1];
      if (facility === undefined) return;
      assignment[String(customer.id)] = facility.id;
      open.add(pointOf[unit] ?? -1);
    });
    return {
      ok: true,
      value: {
        cost,
        bound,
        gap: cost > 0 ? (cost - bound) / cost : 0,
        open: facilities.filter((_, point) => open.has(point)).map((one) => one.id),
        assignment,
        status,
        ...(unserved.length > 0 && {
          unserved: unserved.map(({ unit, reason }) => ({ id: customers[unit]?.id ?? unit, reason })),
        }),
        seconds: elapsedS(),
      },
    };
  },
});
