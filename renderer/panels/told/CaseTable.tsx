import type { FigureRef } from "../../../core/explain/explanation.ts";
import { type ClearanceCase, clearanceCases } from "../../../core/model/clearanceRows.ts";
import type { Clearance } from "../../../core/plant/clearance.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import type { UnitSystem } from "../../../core/units/unitSystem.ts";
import { Figure } from "../../explain/Figure.tsx";
import { conditionWords } from "../words.ts";

type Props = {
  readonly clearance: Extract<Clearance, { kind: "known" }>;
  readonly units: UnitSystem;
  readonly figureOf: (part: ClearanceCase) => FigureRef;
  readonly limitWords: (part: ClearanceCase) => string;
};

/** Height of the line over something in every case, each with its reason and its limit; the worst case is marked. */
export function CaseTable({ clearance, units, figureOf, limitWords }: Props) {
  return (
    <table>
      <tbody>
        {clearanceCases.map((name) => (
          <tr key={name} className={name === clearance.worstCase ? "is-worst" : ""}>
            <th scope="row">{conditionWords[name]}</th>
            <td className="figure">
              <Figure of={figureOf(name)}>{formatLength(clearance.byCase[name], units, "clearance")}</Figure>
            </td>
            <td className="quiet">{limitWords(name)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
