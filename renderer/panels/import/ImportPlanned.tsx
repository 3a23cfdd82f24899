import type { ImportReply } from "../../../core/contract/shapes.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import { unitsOf } from "../../app/session.ts";
import { useOpenRoute } from "../../app/useSession.ts";
import { words } from "./words.ts";

const mostBad = 200;
const mostReviewed = 60;

type Props = { readonly plan: ImportReply; readonly onColumn: (field: string, heading: string) => void };

/** How a file will be read: its columns, its first rows, what is bad and why. */
export function ImportPlanned({ plan, onColumn }: Props) {
  const { problem, newCount, changedCount, skippedCount, spanCount, bad } = plan;
  return (
    <>
      {problem && (
        <p className="problem" role="alert">
          <strong>{problem.what}</strong> {problem.mend} <span className="alert-where">{problem.where}</span>
        </p>
      )}
      <p className="import-sum">{words.sum(newCount, changedCount, skippedCount, bad.length, spanCount)}</p>
      <BadRows plan={plan} />
      <Columns plan={plan} onColumn={onColumn} />
      <FirstRows plan={plan} />
      {plan.notes.length > 0 && <h3>{words.notes}</h3>}
      <ul className="notes">
        {plan.notes.map((note) => (
          <li key={note}>{note}</li>
        ))}
      </ul>
      <SpansForReview plan={plan} />
    </>
  );
}

function BadRows({ plan: { bad, lineWord } }: { readonly plan: ImportReply }) {
  if (bad.length === 0) return null;
  return (
    <>
      <h3>{words.badRows}</h3>
      <div className="scroll">
        <table aria-label={words.badRows}>
          <thead>
            <tr>
              <th scope="col" className="figure">
                {words.lines[lineWord]}
              </th>
              <th scope="col">{words.column}</th>
              <th scope="col">{words.value}</th>
              <th scope="col">{words.wrong}</th>
              <th scope="col">{words.accepted}</th>
            </tr>
          </thead>
          <tbody>
            {bad.slice(0, mostBad).map((row) => (
              <tr key={`${row.line} ${row.column} ${row.what}`}>
                <td className="figure">{row.line}</td>
                <td>{row.column}</td>
                <td className="value">{row.value}</td>
                <td>{row.what}</td>
                <td>{row.accepted}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {bad.length > mostBad && <p className="quiet">{words.firstOf(mostBad, bad.length)}</p>}
    </>
  );
}

function Columns({ plan, onColumn }: Props) {
  return (
    <>
      <h3>{words.columns}</h3>
      <div className="columns">
        {plan.fields.map(({ field, title, required }) => (
          <label key={field}>
            <span>{required ? words.needed(title) : title}</span>
            <select value={plan.columns[field] ?? ""} onChange={(event) => onColumn(field, event.target.value)}>
              <option value="">{words.notInFile}</option>
              {plan.headings.map((heading) => (
                <option key={heading} value={heading}>
                  {heading}
                </option>
              ))}
            </select>
          </label>
        ))}
      </div>
    </>
  );
}

function FirstRows({ plan: { headings, firstRows, columns } }: { readonly plan: ImportReply }) {
  const used = new Set(Object.values(columns));
  return (
    <>
      <h3>{words.firstRows}</h3>
      <div className="scroll">
        <table aria-label={words.firstRows}>
          <thead>
            <tr>
              {headings.map((heading) => (
                <th key={heading} scope="col" className={used.has(heading) ? "" : "quiet"}>
                  {heading}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {firstRows.slice(0, 8).map((cells, row) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: rows of a file are told apart by their place only
              <tr key={row}>
                {headings.map((heading, column) => (
                  <td key={heading} className={used.has(heading) ? "" : "quiet"}>
                    {cells[column] ?? ""}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}

function SpansForReview({ plan: { spansForReview } }: { readonly plan: ImportReply }) {
  const units = unitsOf(useOpenRoute());
  if (spansForReview.length === 0) return null;
  return (
    <>
      <h3>{words.spansToLookAt}</h3>
      <ul className="lines">
        {spansForReview.slice(0, mostReviewed).map((span) => (
          <li key={span.spanId}>
            <span>{words.review(span.fromTag, span.toTag, span.review)}</span>
            <span className="figure">{formatLength(span.lengthM, units, "span")}</span>
          </li>
        ))}
      </ul>
      {spansForReview.length > mostReviewed && (
        <p className="quiet">{words.firstOf(mostReviewed, spansForReview.length)}</p>
      )}
    </>
  );
}
