import { z } from "zod";
import { runLayout } from "../../layout/runLayout.ts";
import { id } from "../../model/fields.ts";
import { ok } from "../../model/result.ts";
import type { Command } from "../command.ts";

const input = z.strictObject({ cables: z.array(id).optional() });

/** Lays the route out, or some cables of it. Units left over are told by runLayout itself and by the findings. */
export const layoutRun: Command<z.infer<typeof input>> = {
  id: "layout.run",
  input,
  label: ({ cables }, route) =>
    cables ? `Lay out ${cables.map((one) => route.cable.get(one)?.name ?? one).join(", ")}` : "Lay out the route",
  run(route, { cables }) {
    const layout = runLayout(route, cables ? { cableIds: cables } : {});
    return layout.ok ? ok([...layout.value.rows]) : layout;
  },
};
