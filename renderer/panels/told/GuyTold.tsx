import { basisWords } from "../../../core/explain/basisWords.ts";
import { governingOfGuy } from "../../../core/plant/guyStrength.ts";
import { strengthLimitFor } from "../../../core/plant/strength.ts";
import { catalogueBasis } from "../../../core/rules/rule.ts";
import { fixedText } from "../../../core/units/fixedText.ts";
import { formatForce } from "../../../core/units/formatForce.ts";
import { refKey } from "../../app/ref.ts";
import { Figure } from "../../explain/Figure.tsx";
import { type Fact, Facts } from "../Facts.tsx";
import { RefButton } from "../RefButton.tsx";
import { conditionWords, titleOf } from "../words.ts";
import type { Told } from "./told.ts";
import { guyWords } from "./words.ts";

/** A guy: what it holds in its governing case with the load factors, against what it and its anchor may be pulled. */
export function GuyTold({ plant, id, units }: Told) {
  const { poleId, strandTypeId, anchorN } = plant.rowOf("guy", id);
  const { breakingN } = plant.rowOf("strandType", strandTypeId);
  const { condition, tensionN: pullN } = governingOfGuy(plant, id);
  const part = (of: "guy" | "anchor", strengthN: number | null): Fact[] => {
    const limit = strengthLimitFor(plant, of, condition);
    if (strengthN === null || !limit) return [];
    const share =
      pullN === null ? "" : `${fixedText((pullN / strengthN) * 100, 1)} % of ${formatForce(strengthN, units)}`;
    return [
      [guyWords[of], share],
      [guyWords.allowed[of], `${fixedText(limit.limitFrac * 100, 0)} %; ${basisWords(catalogueBasis(limit))}`],
    ];
  };
  return (
    <Facts
      facts={[
        [
          guyWords.pole,
          <RefButton key="pole" to={refKey("pole", poleId)}>
            {titleOf(plant, refKey("pole", poleId))}
          </RefButton>,
        ],
        [guyWords.governs, conditionWords[condition]],
        [
          guyWords.pull,
          pullN === null ? (
            guyWords.unknown
          ) : (
            <Figure key="pull" of={{ figure: "guyTension", id }}>
              {formatForce(pullN, units)}
            </Figure>
          ),
        ],
        ...part("guy", breakingN),
        ...part("anchor", anchorN),
      ]}
    />
  );
}
