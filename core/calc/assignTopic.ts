import { z } from "zod";
import { linearAssignment } from "../assignment/linearAssignment.ts";
import type { Answer } from "./answer.ts";
import { figure } from "./fields.ts";
import { defineSearchTopic } from "./topic.ts";

const names = z.array(z.string().min(1));

export const assignTopic = defineSearchTopic({
  id: "assign",
  title: "A port for every unit at the least cost",
  request: z.strictObject({
    units: names.describe("what the units are called, one a row of costs; unit 1, unit 2 where left out").optional(),
    ports: names.describe("what the ports are called, one a column; port 1, port 2 where left out").optional(),
    costs: z
      .array(z.array(figure("any measure").nullable()).min(1))
      .min(1)
      .describe("units x ports; null where the unit may not have the port"),
  }),
  reply: z.strictObject({
    assignment: z.array(z.strictObject({ unit: z.string(), port: z.string(), cost: figure("of this pair") })),
    cost: figure("of all together"),
  }),
  example: {
    units: ["12 Elm St", "14 Elm St", "16 Elm St"],
    ports: ["1", "2", "3", "4"],
    costs: [
      [1, 2, 3, 4],
      [2, 1, null, 3],
      [3, 2, 1, null],
    ],
  },
  answer({ units: unitNames, ports: portNames, costs }) {
    const units = unitNames ?? costs.map((_, row) => `unit ${row + 1}`);
    const ports = portNames ?? (costs[0] ?? []).map((_, column) => `port ${column + 1}`);
    if (units.length !== costs.length) throw new RangeError(`costs has ${costs.length} rows for ${units.length} units`);
    const odd = costs.findIndex((row) => row.length !== ports.length);
    if (odd !== -1)
      throw new RangeError(`costs[${odd}] has ${costs[odd]?.length ?? 0} figures for ${ports.length} ports`);
    const found = linearAssignment(costs.map((row) => row.map((cost) => cost ?? Number.POSITIVE_INFINITY)));
    if (found.kind === "infeasible") return noPort(found, units, ports);
    const assignment = found.columns.map((column, row) => ({
      unit: units[row] ?? "",
      port: ports[column] ?? "",
      cost: costs[row]?.[column] ?? 0,
    }));
    return { ok: true as const, value: { assignment, cost: found.cost } };
  },
});

function noPort(
  { rows, columns }: { readonly rows: readonly number[]; readonly columns: readonly number[] },
  units: readonly string[],
  ports: readonly string[],
): Answer<never> {
  const who = rows.map((row) => units[row]).join(", ");
  const share = columns.map((column) => ports[column]).join(", ");
  const what =
    columns.length === 0
      ? `${who} may have no port at all.`
      : `${rows.length} units, ${who}, may have only ${columns.length === 1 ? "this port" : "these ports"}: ${share}.`;
  return {
    ok: false,
    fault: { code: "no-port", what, where: "costs", mend: "Allow one of them another port, or leave one out." },
  };
}
