import type { Reply } from "../../../core/contract/contract.ts";
import { drawnRef } from "../../app/look.ts";
import { refKey } from "../../app/ref.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { RefButton } from "../RefButton.tsx";
import { revisionWords } from "./words.ts";

const mostListed = 200;

/** What was changed, under headings; a line whose thing is on the diagram leads there. */
export function ChangeList(props: { readonly open: OpenRoute; readonly changes: Reply<"revision.changes"> }) {
  const { open, changes } = props;
  const { revisionId, sinceLetter, groups } = changes;
  const letter = revisionId === null ? null : (open.route.revision.get(revisionId)?.letter ?? null);
  if (letter !== null && sinceLetter === null) return <p className="quiet">{revisionWords.unchanged(letter)}</p>;
  if (sinceLetter === null) return null;
  return (
    <>
      {letter !== null && <p className="quiet">{revisionWords.unchanged(letter)}</p>}
      <h3>
        {letter === null ? revisionWords.changedSince(sinceLetter) : revisionWords.changedTo(letter, sinceLetter)}
      </h3>
      {groups.map(({ heading, lines }) => (
        <section key={heading} aria-label={heading}>
          <h4>{heading}</h4>
          <ul className="lines">
            {lines.slice(0, mostListed).map(({ text, table, id, isGone }) => {
              const ref = isGone || !open.plant.row(table, id) ? null : drawnRef(open.plant, refKey(table, id));
              return (
                <li key={`${table} ${id} ${text}`}>{ref === null ? text : <RefButton to={ref}>{text}</RefButton>}</li>
              );
            })}
          </ul>
        </section>
      ))}
    </>
  );
}
