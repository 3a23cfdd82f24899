import { spansAtPole } from "../../core/plant/geometry.ts";
import { spanName } from "../../core/plant/names.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { poleSeparation, separationLimitFor } from "../../core/plant/separation.ts";
import { spanClearance } from "../../core/plant/spanClearance.ts";
import { formatLength } from "../../core/units/formatLength.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import { refKey } from "../app/ref.ts";
import { titleOf } from "../panels/words.ts";
import type { ProfileHand } from "./profileView.ts";
import { attachmentName, caseWords, profileWords } from "./words.ts";

/** What is held, live: its height, the least clearance of the spans at its pole, and what it keeps from the others there. */
export function HeldCard({ hand, units }: { readonly hand: ProfileHand; readonly units: UnitSystem }) {
  const { plant } = hand.draft;
  const attachment = plant.row("attachment", hand.attachmentId);
  if (!attachment) return null;
  return (
    <div className="profile-card" data-card="held">
      <strong>{formatLength(attachment.heightM, units, "height")}</strong>
      <span>{`${attachmentName(attachment)}, pole ${plant.rowOf("pole", attachment.poleId).tag}`}</span>
      <table>
        <tbody>
          {heldLines(plant, hand.attachmentId, units).map(({ key, name, text, limit, isShort }) => (
            <tr key={key} className={isShort ? "is-short" : undefined}>
              <th scope="row">{name}</th>
              <td>{`${isShort ? "◆ " : ""}${text}`}</td>
              <td>{limit}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

type HeldLine = {
  readonly key: string;
  readonly name: string;
  readonly text: string;
  readonly limit: string;
  readonly isShort: boolean;
};

function heldLines(plant: Plant, attachmentId: string, units: UnitSystem): readonly HeldLine[] {
  const { poleId, kind } = plant.rowOf("attachment", attachmentId);
  const against = (limitM: number | undefined): string =>
    limitM === undefined ? "" : `${profileWords.limit.toLowerCase()} ${formatLength(limitM, units, "height")}`;
  const spans = spansAtPole(plant, poleId).flatMap((spanId): HeldLine[] => {
    const least = spanClearance(plant, spanId);
    if (!least) return [];
    const over =
      least.over.table === "span" ? profileWords.ground : titleOf(plant, refKey(least.over.table, least.over.id));
    return [
      {
        key: spanId,
        name: `${spanName(plant, spanId)}: over ${over}, ${caseWords[least.condition].toLowerCase()}`,
        text: formatLength(least.measuredM, units, "clearance"),
        limit: against(least.limit?.limitM),
        isShort: least.limit !== undefined && least.measuredM < least.limit.limitM,
      },
    ];
  });
  const others = plant
    .where("attachment", "poleId", poleId)
    .filter((id) => (kind === "ourStrand" ? id !== attachmentId : id === attachmentId))
    .flatMap((id): HeldLine[] => {
      const apart = poleSeparation(plant, id);
      if (!apart) return [];
      const gapM = Math.abs(apart.aboveM);
      const limitM = separationLimitFor(plant, plant.rowOf("attachment", id), "AtPole")?.limitM;
      const other = kind === "ourStrand" ? attachmentName(plant.rowOf("attachment", id)) : "our strand";
      return [
        {
          key: id,
          name: profileWords.atPole(other),
          text: formatLength(gapM, units, "clearance"),
          limit: against(limitM),
          isShort: limitM !== undefined && gapM < limitM,
        },
      ];
    });
  return [...spans, ...others];
}
