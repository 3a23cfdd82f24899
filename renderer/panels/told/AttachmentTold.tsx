import { poleSeparation } from "../../../core/plant/separation.ts";
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
  const { poleId } = plant.rowOf("attachment", id);
  const separation = poleSeparation(plant, id);
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
        ]}
      />
      <RangeTold plant={plant} id={poleId} units={units} />
    </>
  );
}
