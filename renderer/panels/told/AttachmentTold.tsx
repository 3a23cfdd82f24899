import { basisWords } from "../../../core/explain/basisWords.ts";
import { poleSeparation, separationLimitFor } from "../../../core/plant/separation.ts";
import { catalogueBasis } from "../../../core/rules/rule.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import { refKey } from "../../app/ref.ts";
import { Figure } from "../../explain/Figure.tsx";
import { Facts } from "../Facts.tsx";
import { RefButton } from "../RefButton.tsx";
import { titleOf } from "../words.ts";
import { RangeTold } from "./RangeTold.tsx";
import type { Told } from "./told.ts";
import { attachmentToldWords } from "./words.ts";

/** An attachment: its pole, how far it is from our strand, and where ours may be beside it. */
export function AttachmentTold({ plant, id, units }: Told) {
  const row = plant.rowOf("attachment", id);
  const { poleId } = row;
  const separation = poleSeparation(plant, id);
  const limit = separation ? separationLimitFor(plant, row, "AtPole") : undefined;
  return (
    <>
      <Facts
        facts={[
          [
            attachmentToldWords.pole,
            <RefButton key="pole" to={refKey("pole", poleId)}>
              {titleOf(plant, refKey("pole", poleId))}
            </RefButton>,
          ],
          [
            attachmentToldWords.aboveOurs,
            separation && (
              <Figure key="above" of={{ figure: "poleSeparation", id }}>
                {formatLength(separation.aboveM, units, "clearance")}
              </Figure>
            ),
          ],
          [attachmentToldWords.kept, limit ? formatLength(limit.limitM, units, "offset") : null],
          [attachmentToldWords.basis, limit ? basisWords(catalogueBasis(limit)) : null],
        ]}
      />
      <RangeTold plant={plant} id={poleId} units={units} />
    </>
  );
}
