import { changeOfState } from "./changeOfState.ts";
import { parabolicSagM } from "./parabola.ts";
import { rulingSpanM } from "./rulingSpan.ts";
import type { Settled } from "./settled.ts";
import { stringingHorizontalN } from "./stringing.ts";

/** What a stringing table is worked out from. */
export type StringingTableBasis = {
  /** level spans, one a column */
  readonly spansM: readonly number[];
  /** one a row */
  readonly temperaturesDegC: readonly number[];
  readonly axialStiffnessN: number;
  readonly expansionPerDegC: number;
  /** what hangs while the strand is pulled: itself, or itself with its cable, N/m */
  readonly weightNPerM: number;
  /** the one condition that all else follows from: a sag or a tension under some load at some temperature */
  readonly limit: {
    readonly weightNPerM: number;
    readonly temperatureDegC: number;
  } & ({ readonly sagFrac: number } | { readonly horizontalN: number });
  /** clamped: each span by itself meets the limit; slipping: the spans are one row on one tension, and its ruling span meets it */
  readonly poles: "clamped" | "slipping";
};

/** What the crew pulls to. */
export type StringingCell = { readonly horizontalN: number; readonly sagM: number };

/**
 * Initial sag and tension by temperature and span.
 *
 * Parabolic, with the errors of the change of state. Creep is left out: the same table holds finally.
 *
 * @returns one row a temperature, in it one cell a span; or the fault of the first cell that did not settle
 * @throws RangeError when an argument is out of its range
 * @source change of state from the limiting condition; sags of one tension go as the squares of the spans; checked in
 *   tests/standards/rulingSpan.test.ts
 */
export function stringingTable(basis: StringingTableBasis): Settled<readonly (readonly StringingCell[])[]> {
  const { spansM, weightNPerM, poles } = basis;
  const rowM = poles === "slipping" ? rulingSpanM(spansM) : null;
  const rows: StringingCell[][] = [];
  for (const temperatureDegC of basis.temperaturesDegC) {
    const row: StringingCell[] = [];
    for (const spanM of spansM) {
      const tension = tensionN(basis, rowM ?? spanM, temperatureDegC);
      if (!tension.ok) return tension;
      row.push({ horizontalN: tension.value, sagM: parabolicSagM(spanM, weightNPerM, tension.value) });
    }
    rows.push(row);
  }
  return { ok: true, value: rows };
}

function tensionN(
  { axialStiffnessN, expansionPerDegC, weightNPerM, limit }: StringingTableBasis,
  spanM: number,
  temperatureDegC: number,
): Settled<number> {
  const horizontalN =
    "sagFrac" in limit ? stringingHorizontalN(spanM, limit.weightNPerM, limit.sagFrac) : limit.horizontalN;
  const state = changeOfState({
    spanM,
    axialStiffnessN,
    expansionPerDegC,
    from: { weightNPerM: limit.weightNPerM, temperatureDegC: limit.temperatureDegC, horizontalN },
    to: { weightNPerM, temperatureDegC },
  });
  return state.ok ? { ok: true, value: state.value.horizontalN } : state;
}
