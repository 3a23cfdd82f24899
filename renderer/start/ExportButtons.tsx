import { exportFormats } from "../../core/contract/exportMethods.ts";
import { exportActionId } from "../app/actions/exportActions.ts";
import { actionOf } from "../app/actions.ts";
import { ActionButton } from "../panels/Bar.tsx";
import { words } from "./words.ts";

/** The route as a file for other programs, a button for each kind of file. */
export function ExportButtons() {
  return (
    <section aria-label={words.others}>
      <h3>{words.others}</h3>
      <p className="quiet">{words.othersWhy}</p>
      <div className="exports">
        {exportFormats.map((format) => (
          <ActionButton key={format} action={actionOf(exportActionId(format))} />
        ))}
      </div>
    </section>
  );
}
