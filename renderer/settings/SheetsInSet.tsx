import { type SheetKind, sheetKinds } from "../../core/sheets/book.ts";
import { sheetKindWords } from "../../core/sheets/sheetKindWords.ts";
import { useLookOnly } from "../app/useLookOnly.ts";

/** Kinds of sheets a set may go without: all but its cover and what is drawn by itself. */
const kinds = sheetKinds.filter((kind) => kind !== "cover" && kind !== "worksheet");

/** Which kinds of sheets are drawn: one box each. */
export function SheetsInSet(props: {
  readonly name: string;
  /** Kinds left out, with commas between them. */
  readonly leftOut: string;
  readonly onKeep: (leftOut: string) => void;
}) {
  const { name, leftOut, onKeep } = props;
  const lookOnly = useLookOnly();
  const out = new Set(leftOut.split(","));
  const turn = (kind: SheetKind): void =>
    onKeep(kinds.filter((one) => (one === kind ? !out.has(one) : out.has(one))).join(","));
  return (
    <fieldset className="sheets-in-set" aria-label={name}>
      {kinds.map((kind) => (
        <label key={kind}>
          <input
            type="checkbox"
            checked={!out.has(kind)}
            disabled={lookOnly !== null}
            title={lookOnly ?? undefined}
            onChange={() => turn(kind)}
          />{" "}
          {sheetKindWords[kind]}
        </label>
      ))}
    </fieldset>
  );
}
