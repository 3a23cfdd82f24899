import { basisWords } from "../../../core/explain/basisWords.ts";
import type { ClearanceCase } from "../../../core/model/clearanceRows.ts";
import type { ClearanceLimit } from "../../../core/model/tables.ts";
import { clearanceLimitFor, crossingClearance } from "../../../core/plant/clearance.ts";
import { spanName } from "../../../core/plant/names.ts";
import { catalogueBasis, isUnverified } from "../../../core/rules/rule.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import type { UnitSystem } from "../../../core/units/unitSystem.ts";
import { refKey } from "../../app/ref.ts";
import { Facts } from "../Facts.tsx";
import { RefButton } from "../RefButton.tsx";
import { CaseTable } from "./CaseTable.tsx";
import type { Told } from "./told.ts";
import { crossingWords as words } from "./words.ts";

/** A crossing: what lies under the span, and how high the line hangs over it against the limit. */
export function CrossingTold({ plant, id, units }: Told) {
  const crossing = plant.rowOf("crossing", id);
  const limit = clearanceLimitFor(plant, crossing.surface);
  const limitIn = (condition: ClearanceCase) => clearanceLimitFor(plant, crossing.surface, condition);
  const clearance = crossingClearance(plant, id);
  return (
    <>
      <Facts
        facts={[
          [
            words.span,
            <RefButton key="span" to={refKey("span", crossing.spanId)}>
              {spanName(plant, crossing.spanId)}
            </RefButton>,
          ],
          [words.limit, limit ? formatLength(limit.limitM, units, "height") : words.noLimitInSet],
          [words.basis, limit ? basisWords(catalogueBasis(limit)) : null],
        ]}
      />
      <h3>{words.clearance}</h3>
      {clearance.kind === "unknown" ? (
        <p className="quiet">{clearance.why}</p>
      ) : (
        <>
          <CaseTable
            clearance={clearance}
            units={units}
            figureOf={(part) => ({ figure: "clearance", id, part })}
            limitWords={(part) => limitWords(limitIn(part), units)}
          />
          {clearance.surfaceAssumed && <p className="quiet">{words.surfaceTaken}</p>}
          {clearance.strandAssumed && <p className="quiet">{words.strandTaken}</p>}
        </>
      )}
    </>
  );
}

function limitWords(limit: ClearanceLimit | undefined, units: UnitSystem): string {
  if (!limit) return words.noLimit;
  return words.ofLimit(formatLength(limit.limitM, units, "height"), isUnverified(catalogueBasis(limit)));
}
