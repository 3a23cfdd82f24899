import { type Dispute, type DisputeSide, saidBy } from "../../../core/closeout/disputes.ts";
import { readingText } from "../../../core/closeout/packet/readingText.ts";
import { subjectTables } from "../../../core/closeout/subject.ts";
import { subjectTag } from "../../../core/edits/subjects.ts";
import type { Row } from "../../../core/model/tables.ts";
import { askedWords } from "../../../core/sheets/packet/words.ts";
import { runCommand } from "../../app/edits.ts";
import { refKey } from "../../app/ref.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { unitsOf } from "../../app/session.ts";
import { useLookOnly } from "../../app/useLookOnly.ts";
import { useSession, useView } from "../../app/useSession.ts";
import { areEditsHeld } from "../../app/viewStore.ts";
import { RefButton } from "../../panels/RefButton.tsx";
import { againstDrawn, drawnOf } from "./againstDrawn.ts";
import { packetWords } from "./words.ts";

type Props = { readonly open: OpenRoute; readonly dispute: Dispute };

/** Readings of one thing that differ: who, when, what, how far from the drawing, and the choice between them. */
export function DisputeCard({ open, dispute: { readingId, sides } }: Props) {
  const [first] = sides;
  if (!first) return null;
  const said = saidBy(first);
  const light = said.wavelengthNm > 0 ? ` at ${said.wavelengthNm} nm` : "";
  const thing = `${askedWords[said.what]}${light}, ${subjectTag(open.route, said)}`;
  const table = subjectTables[said.kind];
  const isThere = open.route[table].has(said.subjectId);
  return (
    <li className="rival" aria-label={thing}>
      {isThere ? <RefButton to={refKey(table, said.subjectId)}>{thing}</RefButton> : <b>{thing}</b>}
      {first.standing === null && <span className="quiet">{packetWords.noneStands}</span>}
      <ul className="rival-sides">
        {sides.map((side) => (
          <Side key={saidBy(side).id} open={open} readingId={readingId} side={side} thing={thing} />
        ))}
      </ul>
    </li>
  );
}

function Side(props: {
  readonly open: OpenRoute;
  readonly readingId: string;
  readonly side: DisputeSide;
  readonly thing: string;
}) {
  const { open, readingId, side, thing } = props;
  const { standing, rivals } = side;
  const session = useSession();
  const isBusy = useView(areEditsHeld);
  const lookOnly = useLookOnly();
  const units = unitsOf(open);
  const said = saidBy(side);
  const crews = rivals.map((one) => crewOf(open, one)).join(", ");
  const others = [...open.route.rivalReading.values()].find((one) => one.readingId === readingId);
  const decision = standing
    ? { rivalId: others?.id ?? "", stands: "present" }
    : { rivalId: said.id, stands: "brought" };
  return (
    <li>
      {standing && <span className="quiet">{packetWords.standing}</span>}
      {rivals.map((one) => (
        <span key={one.id} className="quiet">
          {packetWords.brought(open.route.packet.get(one.packetId)?.number ?? 0, crewOf(open, one))}
        </span>
      ))}
      <strong>{readingText(said.what, said, units)}</strong>
      <span>{againstDrawn(said.what, said, drawnOf(open.plant, said, readingId), units)}</span>
      {[...(standing ? [standing] : []), ...rivals].map((one) => (
        <span key={one.id} className="quiet">
          {one.by}, {whenWords(one.atIso)}
        </span>
      ))}
      <button
        type="button"
        className="fix"
        aria-label={standing ? packetWords.keepOf(thing) : packetWords.takeOf(crews, thing)}
        disabled={isBusy || lookOnly !== null}
        title={lookOnly ?? undefined}
        onClick={() => void runCommand(session, "rival.decide", decision)}
      >
        {standing ? packetWords.keep : packetWords.take}
      </button>
    </li>
  );
}

function crewOf({ route }: OpenRoute, { packetId }: Row<"rivalReading">): string {
  return route.packet.get(packetId)?.crew ?? packetId;
}

/** Date and time as they were signed, without seconds. */
function whenWords(atIso: string): string {
  return atIso.replace("T", " ").slice(0, 16);
}
