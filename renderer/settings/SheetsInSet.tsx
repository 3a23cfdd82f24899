import { type SheetKind, sheetKinds } from "../../core/sheets/book.ts";
import { sheetKindWords } from "../../core/sheets/sheetKindWords.ts";
import { useLookOnly } from "../app/useLookOnly.ts";

/** Kinds of sheets a set may go without: all but its cover and what is drawn by itself. */
const kinds = sheetKinds.filter((kind) => kind !== "cover" && kind !== "worksheet");

/** Kinds left out with one more of them, or one fewer. */
export function leftOutWith(leftOut: string, kind: SheetKind, isOut: boolean): string {
  const out = new Set(leftOut.split(","));
  return kinds.filter((one) => (one === kind ? isOut : out.has(one))).join(",");
}

/** Which kinds of sheets are drawn: one box each. */
export function SheetsInSet(props: {
  readonly name: string;
  /** Kinds left out, with commas between them. */
  readonly leftOut: string;
  readonly onTurn: (kind: SheetKind, isOut: boolean) => void;
}) {
  const { name, leftOut, onTurn } = props;
  const lookOnly = useLookOnly();
  const out = new Set(leftOut.split(","));
  return (
    <fieldset className="sheets-in-set" aria-label={name}>
      {kinds.map((kind) => (
        <label key={kind}>
          <input
            type="checkbox"
            checked={!out.has(kind)}
            disabled={lookOnly !== null}
            title={lookOnly ?? undefined}
            onChange={(event) => onTurn(kind, !event.target.checked)}
          />{" "}
          {sheetKindWords[kind]}
        </label>
      ))}
    </fieldset>
  );
}
