import { useState } from "react";
import type { Reply } from "../../core/contract/contract.ts";
import { runCommand } from "../app/edits.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { useSession } from "../app/useSession.ts";
import { FieldLine } from "./FieldLine.tsx";
import { columnName, markWords, type StandardColumn, words } from "./words.ts";

type Shipped = Reply<"catalogue.basis">["standards"][string];

type Read = {
  readonly basisDocument: string;
  readonly basisClause: string;
  readonly basisEdition: string;
  readonly basisMark: keyof typeof markWords;
};

const fields = ["basisDocument", "basisClause", "basisEdition", "basisMark"] as const;
const companysOwn: Read = { basisDocument: "", basisClause: "", basisEdition: "", basisMark: "practice" };

/** Where a standard was read, and the fields to say so. */
export function StandardBasis(props: {
  readonly open: OpenRoute;
  readonly column: StandardColumn;
  readonly value: string | number | null;
  /** What the program says of the value it brought; a route of an older file knows no other source. */
  readonly shipped: Shipped | undefined;
}) {
  const { open, column, value, shipped } = props;
  const session = useSession();
  const [isOpen, setIsOpen] = useState(false);
  const read: Read = open.route.settingBasis.get(column) ?? ofShipped(shipped, value);
  const keep = (changed: Partial<Read>): void => {
    const { basisDocument, basisClause, basisEdition, basisMark } = { ...read, ...changed };
    const basis = { document: basisDocument, clause: basisClause, edition: basisEdition, mark: basisMark };
    void runCommand(session, "settings.set", { values: { [column]: value }, basis });
  };
  return (
    <details onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary className="quiet">{basisText(read)}</summary>
      {(isOpen ? fields : []).map((field) => (
        <FieldLine
          key={field}
          route={open.route}
          table="settingBasis"
          column={field}
          value={read[field]}
          units={unitsOf(open)}
          name={columnName(field)}
          onKeep={(kept) => keep({ [field]: kept })}
        />
      ))}
    </details>
  );
}

function ofShipped(shipped: Shipped | undefined, value: string | number | null): Read {
  if (!shipped || shipped.value !== value) return { ...companysOwn, basisDocument: words.ownValue };
  const { document, clause, edition, mark } = shipped;
  return { basisDocument: document, basisClause: clause, basisEdition: edition, basisMark: mark };
}

function basisText({ basisDocument, basisClause, basisEdition, basisMark }: Read): string {
  const source = [basisDocument, basisClause, basisEdition].filter((one) => one !== "").join(", ");
  return `${words.basis}: ${source} (${markWords[basisMark]})`;
}
