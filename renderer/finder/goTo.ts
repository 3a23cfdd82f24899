import { chooseAndShow, drawnRef } from "../app/look.ts";
import { type RefKey, refKey, splitRef } from "../app/ref.ts";
import { openRouteOf, type Session } from "../app/session.ts";
import { previewSheets } from "../app/sheetJobs.ts";
import { fullScalePxPerM } from "../canvas/viewport.ts";

/** Shows a row of the route on the diagram and chooses it; a cable or a strand is chosen as its spans. */
export function goToRow(session: Session, ref: RefKey): void {
  const { plant } = openRouteOf(session);
  const { table, id } = splitRef(ref);
  const spans =
    table === "cable"
      ? plant.where("cableRun", "cableId", id).map((run) => plant.rowOf("cableRun", run).spanId)
      : table === "strandSection"
        ? plant.where("span", "strandSectionId", id)
        : null;
  const drawn = spans?.map((spanId) => refKey("span", spanId)) ?? [drawnRef(plant, ref) ?? ref];
  session.view.setState({ sheets: null, isSettingsOpen: false, isSideOpen: true });
  chooseAndShow(session, drawn, fullScalePxPerM * 1.5);
}

/** Opens the preview at a sheet. */
export async function goToSheet(session: Session, number: string): Promise<void> {
  if (!session.view.getState().sheets) await previewSheets(session);
  session.view.setState({ sheetWanted: number });
}

/** Opens the standards at one of them and puts the focus into its field. */
export function goToSetting(session: Session, name: string): void {
  session.view.setState({ sheets: null, isSettingsOpen: true });
  // the field is there only once the room has been drawn
  requestAnimationFrame(() =>
    requestAnimationFrame(() => {
      const labels = [...document.querySelectorAll<HTMLLabelElement>(".settings label")];
      labels.find((one) => one.textContent?.startsWith(name))?.control?.focus();
    }),
  );
}
