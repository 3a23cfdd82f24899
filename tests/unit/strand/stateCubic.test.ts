import { expect, it } from "vitest";
import { solveStateCubic } from "../../../core/strand/stateCubic.ts";

it.each([
  [0, 8],
  [5, 3e9],
  [-1700, 2e6],
  [4e6, 1],
  [-4e6, 1e-3],
])("the tension found satisfies H^2 (H + %d) = %d", (shiftN, targetN3) => {
  const state = solveStateCubic(shiftN, targetN3);
  if (!state.ok) throw new Error(state.fault.what);
  const { horizontalN } = state.value;
  const scale = horizontalN ** 2 * (horizontalN + Math.abs(shiftN));
  expect(Math.abs(horizontalN ** 2 * (horizontalN + shiftN) - targetN3) / scale).toBeLessThan(1e-12);
});

it("what overflows does not settle, and is told", () => {
  expect(solveStateCubic(0, Number.POSITIVE_INFINITY)).toMatchObject({ ok: false, fault: { code: "not-settled" } });
});
