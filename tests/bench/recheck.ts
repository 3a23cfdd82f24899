import { applyChange } from "../../core/edits/change.ts";
import type { Route } from "../../core/model/route.ts";
import type { RowChange } from "../../core/model/rowChange.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { openChecker } from "../../core/rules/checker.ts";
import { type Figures, medianMs } from "./measure.ts";

const editCount = 40;

/** Full check of a route, and the recheck after one terminal has been moved by an inch. */
export async function measureRecheck(
  route: Route,
): Promise<{ readonly fullMs: number; readonly recheckMs: number; readonly askedCount: number }> {
  const fullMs = await medianMs(
    3,
    () => openPlant(route),
    (plant) => openChecker(plant).findings(),
  );
  const checker = openChecker(openPlant(route));
  let present = route;
  let askedCount = 0;
  const terminals = [...route.terminal.values()];
  const recheckMs = await medianMs(
    editCount,
    () => {
      const before = terminals.splice(Math.floor(terminals.length / 2), 1)[0];
      if (!before) throw new Error("the route has too few terminals to edit");
      const rows: RowChange[] = [
        { table: "terminal", id: before.id, before, after: { ...before, offsetM: before.offsetM + 0.0254 } },
      ];
      const next = applyChange(present, { rows });
      if (!next.ok) throw new Error(next.fault.what);
      present = next.value;
      return rows;
    },
    (rows) => {
      askedCount = Math.max(askedCount, checker.advance(present, rows).askedCount);
    },
  );
  return { fullMs, recheckMs, askedCount };
}

/** Figures of the recheck on a short and a long route: what it costs against a full check, and whether it grows. */
export async function benchRecheck(short: Route, long: Route): Promise<Figures> {
  const few = await measureRecheck(short);
  const many = await measureRecheck(long);
  return {
    fullCheckMs: many.fullMs,
    recheckAfterOneEditMs: many.recheckMs,
    recheckOverFullCheck: many.recheckMs / many.fullMs,
    recheckGrowthTenTimesTheRoute: many.recheckMs / few.recheckMs,
    rowsAskedAfterOneEdit: many.askedCount,
  };
}
