import { useId, useState } from "react";
import { sheetKinds } from "../../../core/sheets/book.ts";
import { sheetKindWords } from "../../../core/sheets/sheetKindWords.ts";
import { drawSet, saveSheetPictures } from "../../app/sheetJobs.ts";
import { useSession, useView } from "../../app/useSession.ts";
import type { PreviewSheet } from "../../app/viewStore.ts";
import { printSheets } from "./printSheets.ts";
import { chosenSheets, type SheetChoice } from "./sheetChoice.ts";
import { words } from "./words.ts";

/** Chooses sheets of the set and draws only those. */
export function DrawSome(props: { readonly sheets: readonly PreviewSheet[]; readonly current: string }) {
  const { sheets, current } = props;
  const session = useSession();
  const isWhole = useView((state) => state.sheetsOf?.isWhole ?? true);
  const id = useId();
  const [which, setWhich] = useState("all");
  const [range, setRange] = useState("");
  const chosen = chosenSheets(choiceOf(which, range), sheets, current);
  const isBad = chosen === null && range.trim() !== "";
  const kinds = sheetKinds.filter((kind) => sheets.some((one) => one.kind === kind));
  return (
    <form
      className="draw-some"
      onSubmit={(event) => {
        event.preventDefault();
        if (chosen !== null) void drawSet(session, which === "all" && isWhole ? null : chosen);
      }}
    >
      <label htmlFor={`${id}-which`}>{words.which}</label>
      <select id={`${id}-which`} value={which} onChange={(event) => setWhich(event.target.value)}>
        <option value="all">{words.all(sheets.length)}</option>
        <option value="current">{words.shown}</option>
        <option value="range">{words.byNumber}</option>
        {kinds.map((kind) => (
          <option key={kind} value={kind}>
            {sheetKindWords[kind]}
          </option>
        ))}
      </select>
      {which === "range" && (
        <input
          aria-label={words.range}
          placeholder={words.range}
          aria-invalid={isBad}
          aria-describedby={isBad ? `${id}-bad` : undefined}
          value={range}
          onChange={(event) => setRange(event.target.value)}
        />
      )}
      {isBad && (
        <span id={`${id}-bad`} role="alert">
          {words.badRange(sheets.length)}
        </span>
      )}
      <button type="submit" className="fix" disabled={chosen === null}>
        {words.draw}
      </button>
      <button
        type="button"
        className="fix"
        disabled={chosen === null}
        onClick={() => void (chosen && saveSheetPictures(session, chosen))}
      >
        {words.pictures}
      </button>
      <button
        type="button"
        className="fix"
        disabled={chosen === null}
        onClick={() =>
          void printSheets(
            session,
            sheets.filter((one) => chosen?.includes(one.number)),
          )
        }
      >
        {words.print}
      </button>
    </form>
  );
}

function choiceOf(which: string, range: string): SheetChoice {
  const kind = sheetKinds.find((one) => one === which);
  if (kind) return { kind: "sort", sort: kind };
  if (which === "range") return { kind: "range", text: range };
  return { kind: which === "current" ? "current" : "all" };
}
