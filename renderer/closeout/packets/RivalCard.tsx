import { readingText } from "../../../core/closeout/packet/readingText.ts";
import { subjectTag } from "../../../core/edits/subjects.ts";
import type { Row } from "../../../core/model/tables.ts";
import { askedWords } from "../../../core/sheets/packet/words.ts";
import { runCommand } from "../../app/edits.ts";
import { type RefKey, refKey } from "../../app/ref.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { unitsOf } from "../../app/session.ts";
import { useLookOnly } from "../../app/useLookOnly.ts";
import { useSession, useView } from "../../app/useSession.ts";
import { areEditsHeld } from "../../app/viewStore.ts";
import { RefButton } from "../../panels/RefButton.tsx";
import { againstDrawn, drawnOf } from "./againstDrawn.ts";
import { packetWords } from "./words.ts";

/** A reading that stands beside one a crew brought: who, when, what, how far from the drawing, and the choice between them. */
export function RivalCard({ open, rival }: { readonly open: OpenRoute; readonly rival: Row<"rivalReading"> }) {
  const session = useSession();
  const isBusy = useView(areEditsHeld);
  const lookOnly = useLookOnly();
  const { route, plant } = open;
  const standing = route.reading.get(rival.readingId) ?? null;
  const packet = route.packet.get(rival.packetId);
  const crew = packet?.crew ?? rival.packetId;
  const thing = `${askedWords[rival.what]}${rival.wavelengthNm > 0 ? ` at ${rival.wavelengthNm} nm` : ""}, ${subjectTag(route, rival)}`;
  const decide = (stands: "present" | "brought") => runCommand(session, "rival.decide", { rivalId: rival.id, stands });
  const side = (heading: string, read: Row<"reading"> | Row<"rivalReading"> | null) => (
    <Side heading={heading} open={open} rival={rival} read={read} />
  );
  const choice = (stands: "present" | "brought", name: string, label: string) => (
    <button
      type="button"
      className="fix"
      aria-label={label}
      disabled={isBusy || lookOnly !== null}
      title={lookOnly ?? undefined}
      onClick={() => void decide(stands)}
    >
      {name}
    </button>
  );
  const ref = refOf(rival);
  const isThere = plant.row(ref.table, ref.id) !== undefined;
  return (
    <li className="rival" aria-label={thing}>
      {isThere ? <RefButton to={ref.key}>{thing}</RefButton> : <b>{thing}</b>}
      <div className="rival-sides">
        {side(packetWords.standing, standing)}
        {side(packetWords.brought(packet?.number ?? 0, crew), rival)}
        {choice("present", packetWords.keep, packetWords.keepOf(thing))}
        {choice("brought", packetWords.take, packetWords.takeOf(crew, thing))}
      </div>
    </li>
  );
}

function Side(props: {
  readonly heading: string;
  readonly open: OpenRoute;
  readonly rival: Row<"rivalReading">;
  readonly read: Row<"reading"> | Row<"rivalReading"> | null;
}) {
  const { heading, open, rival, read } = props;
  const units = unitsOf(open);
  return (
    <div>
      <span className="quiet">{heading}</span>
      <strong>{read ? readingText(rival.what, read, units) : packetWords.nothing}</strong>
      {read && (
        <>
          <span>{againstDrawn(rival.what, read, drawnOf(open.plant, rival), units)}</span>
          <span className="quiet">{read.by}</span>
          <span className="quiet">{whenWords(read.atIso)}</span>
        </>
      )}
    </div>
  );
}

/** The row a thing of the closeout stands in on the diagram. */
function refOf({ kind, subjectId }: Row<"rivalReading">): {
  readonly table: "pole" | "span" | "strandSection" | "cable" | "closure" | "terminal" | "drop";
  readonly id: string;
  readonly key: RefKey;
} {
  const table = kind === "port" ? "terminal" : kind === "bond" ? "pole" : kind;
  return { table, id: subjectId, key: refKey(table, subjectId) };
}

/** Date and time as they were signed, without seconds. */
function whenWords(atIso: string): string {
  return atIso.replace("T", " ").slice(0, 16);
}
