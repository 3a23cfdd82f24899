import { drawnRef } from "../app/look.ts";
import { type RefKey, refKey, splitRef } from "../app/ref.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { useView } from "../app/useSession.ts";
import { FindingRow } from "./FindingRow.tsx";
import { FieldList } from "./fields/FieldList.tsx";
import { RowHistory } from "./fields/RowHistory.tsx";
import { Touches } from "./fields/Touches.tsx";
import { RefButton } from "./RefButton.tsx";
import { AttachmentTold } from "./told/AttachmentTold.tsx";
import { CrossingTold } from "./told/CrossingTold.tsx";
import { GuyTold } from "./told/GuyTold.tsx";
import { HungTold } from "./told/HungTold.tsx";
import { PoleTold } from "./told/PoleTold.tsx";
import { RouteTold } from "./told/RouteTold.tsx";
import { SpanTold } from "./told/SpanTold.tsx";
import { StructureTold } from "./told/StructureTold.tsx";
import { TerminalTold } from "./told/TerminalTold.tsx";
import type { Told } from "./told/told.ts";
import { UnitTold } from "./told/UnitTold.tsx";
import { panelWords, titleOf } from "./words.ts";

const mostListed = 200;

/** What is chosen, told in the trade's words, with its findings; the route itself where nothing is chosen. */
export function SidePanel({ open }: { readonly open: OpenRoute }) {
  const selection = useView((state) => state.selection);
  const [only] = selection;
  return (
    <aside className="side" aria-label={panelWords.chosen}>
      {only === undefined && <RouteTold open={open} />}
      {only !== undefined && selection.length === 1 && <One open={open} chosen={only} />}
      {selection.length > 1 && <Several open={open} chosen={selection} />}
    </aside>
  );
}

function One({ open, chosen }: { readonly open: OpenRoute; readonly chosen: RefKey }) {
  const { table, id } = splitRef(chosen);
  const { plant } = open;
  if (!plant.row(table, id)) return null;
  const findings = [...open.findings.values()].filter((finding) =>
    finding.subjects
      .map((one) => refKey(one.table, one.id))
      .some((one) => one === chosen || drawnRef(plant, one) === chosen),
  );
  return (
    <>
      <h2>{titleOf(plant, chosen)}</h2>
      <FieldList plant={plant} units={unitsOf(open)} table={table} rowIds={[id]} />
      {tell(table, { plant, id, units: unitsOf(open) })}
      <h3>{panelWords.findings}</h3>
      {findings.length === 0 && <p className="quiet">{panelWords.noFinding}</p>}
      <ul className="findings-here">
        {findings.map((finding) => (
          <FindingRow key={finding.key} finding={finding} open={open} isTabStop isBrief />
        ))}
      </ul>
      <Touches key={`touches ${chosen}`} plant={plant} table={table} id={id} />
      <RowHistory key={`history ${chosen}`} table={table} id={id} />
    </>
  );
}

function tell(table: ReturnType<typeof splitRef>["table"], told: Told) {
  switch (table) {
    case "pole":
      return <PoleTold {...told} />;
    case "terminal":
      return <TerminalTold {...told} />;
    case "attachment":
      return <AttachmentTold {...told} />;
    case "span":
      return <SpanTold {...told} />;
    case "crossing":
      return <CrossingTold {...told} />;
    case "guy":
      return <GuyTold {...told} />;
    case "structure":
      return <StructureTold {...told} />;
    case "livingUnit":
      return <UnitTold {...told} />;
    case "slack":
    case "closure":
      return <HungTold {...told} table={table} />;
    default:
      return null;
  }
}

function Several({ open, chosen }: { readonly open: OpenRoute; readonly chosen: readonly RefKey[] }) {
  const rows = chosen.map(splitRef);
  const [first] = rows;
  const isOneKind = first !== undefined && rows.every((one) => one.table === first.table);
  return (
    <>
      <h2>{panelWords.several(chosen.length)}</h2>
      {isOneKind && (
        <FieldList plant={open.plant} units={unitsOf(open)} table={first.table} rowIds={rows.map((one) => one.id)} />
      )}
      <ul className="lines">
        {chosen.slice(0, mostListed).map((ref) => (
          <li key={ref}>
            <RefButton to={ref}>{titleOf(open.plant, ref)}</RefButton>
          </li>
        ))}
      </ul>
      {chosen.length > mostListed && <p className="quiet">{panelWords.firstListed(mostListed)}</p>}
    </>
  );
}
