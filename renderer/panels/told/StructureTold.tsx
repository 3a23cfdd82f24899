import { basisWords } from "../../../core/explain/basisWords.ts";
import type { ClearanceCase, ClearanceSurface } from "../../../core/model/clearanceRows.ts";
import { clearanceLimitFor } from "../../../core/plant/clearance.ts";
import { spanName } from "../../../core/plant/names.ts";
import { structureClearance, structureSurfaces, undersideClearance } from "../../../core/plant/structureClearance.ts";
import { catalogueBasis } from "../../../core/rules/rule.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import { refKey } from "../../app/ref.ts";
import { Figure } from "../../explain/Figure.tsx";
import { Facts } from "../Facts.tsx";
import { RefButton } from "../RefButton.tsx";
import { CaseTable } from "./CaseTable.tsx";
import type { Told } from "./told.ts";
import { siteWords } from "./words.ts";

/** A building or sign: how far the line passes beside it, how high over it and how low under it, against the limits of its kind. */
export function StructureTold({ plant, id, units }: Told) {
  const { spanId, kind, besideM, bottomM } = plant.rowOf("structure", id);
  const surfaces = structureSurfaces(kind);
  const beside = clearanceLimitFor(plant, surfaces.beside);
  const clearance = structureClearance(plant, id);
  const under = undersideClearance(plant, id);
  const limitWords = (surface: ClearanceSurface, condition?: ClearanceCase): string => {
    const limit = clearanceLimitFor(plant, surface, condition);
    return limit ? siteWords.of(formatLength(limit.limitM, units, "height")) : siteWords.noLimit;
  };
  return (
    <>
      <Facts
        facts={[
          [
            siteWords.span,
            <RefButton key="span" to={refKey("span", spanId)}>
              {spanName(plant, spanId)}
            </RefButton>,
          ],
          [
            siteWords.beside,
            besideM === 0 ? (
              bottomM === null ? (
                siteWords.passesOver
              ) : (
                siteWords.passesEither
              )
            ) : (
              <span key="beside">
                <Figure of={{ figure: "structureBeside", id }}>{formatLength(besideM, units, "clearance")}</Figure>{" "}
                {limitWords(surfaces.beside)}
              </span>
            ),
          ],
          [siteWords.basis, beside ? basisWords(catalogueBasis(beside)) : null],
        ]}
      />
      <h3>{siteWords.over}</h3>
      {clearance.kind === "unknown" ? (
        <p className="quiet">{clearance.why}</p>
      ) : (
        <CaseTable
          clearance={clearance}
          units={units}
          figureOf={(part) => ({ figure: "structureClearance", id, part })}
          limitWords={(part) => limitWords(surfaces.over, part)}
        />
      )}
      {under?.kind === "known" && (
        <>
          <h3>{siteWords.under}</h3>
          <CaseTable
            clearance={under}
            units={units}
            figureOf={(part) => ({ figure: "undersideClearance", id, part })}
            limitWords={(part) => limitWords(surfaces.under, part)}
          />
        </>
      )}
    </>
  );
}
