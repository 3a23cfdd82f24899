import { useId } from "react";
import { paperNames } from "../../../core/model/paperNames.ts";
import { settingsOf } from "../../../core/model/route.ts";
import { companysPaper } from "../../../core/sheets/paper/paper.ts";
import { previewSheets } from "../../app/sheetJobs.ts";
import { useSession, useView } from "../../app/useSession.ts";
import type { PreviewSheet, SheetsOf } from "../../app/viewStore.ts";
import { words } from "./words.ts";

/** What the set is drawn on and the scale that gives its plans; another paper draws it anew and stays at what is shown. */
export function DrawnOn(props: {
  readonly drawn: SheetsOf;
  readonly sheets: readonly PreviewSheet[];
  /** Number of the sheet shown. */
  readonly current: string;
}) {
  const { drawn, sheets, current } = props;
  const session = useSession();
  const id = useId();
  const isBusy = useView((state) => state.job !== null);
  const take = async (name: string): Promise<void> => {
    const paper = paperNames.find((one) => one === name) ?? null;
    const shown = sheets.find((one) => one.number === current);
    await previewSheets(session, { revisionId: drawn.revisionId, paper });
    const anew = session.view.getState().sheets ?? [];
    // another paper has other sheets
    const same = anew.find((one) => one.keys.some((key) => shown?.keys.includes(key)));
    const alike = anew.find((one) => one.kind === shown?.kind);
    session.view.setState({ sheetWanted: (same ?? alike)?.number ?? null });
  };
  const plan = sheets.find((one) => one.kind === "plan");
  return (
    <>
      <label htmlFor={`${id}-paper`}>{words.paper}</label>
      <select
        id={`${id}-paper`}
        value={drawn.paper ?? ""}
        disabled={isBusy}
        aria-describedby={`${id}-gives`}
        onChange={(event) => void take(event.target.value)}
      >
        <option value="">{words.companysPaper(companysPaper(settingsOf(drawn.route)))}</option>
        {paperNames.map((name) => (
          <option key={name} value={name}>
            {name}
          </option>
        ))}
      </select>
      <p id={`${id}-gives`} className="quiet">
        {words.gives(sheets.length, plan?.scale ?? null)}
      </p>
    </>
  );
}
