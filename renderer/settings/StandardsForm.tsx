import { useEffect, useId, useState } from "react";
import type { Reply } from "../../core/contract/contract.ts";
import type { DrawnLayer } from "../../core/model/drawnLayers.ts";
import { withLayerName } from "../../core/model/layerNames.ts";
import { settingsOf } from "../../core/model/route.ts";
import type { SheetKind } from "../../core/sheets/book.ts";
import { changeSettings, runCommand } from "../app/edits.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { useSession } from "../app/useSession.ts";
import type { Cell } from "./columnForm.ts";
import { drawingStyleWords } from "./drawingWords.ts";
import { FieldLine } from "./FieldLine.tsx";
import { LayerNames } from "./LayerNames.tsx";
import { LogoField } from "./LogoField.tsx";
import { leftOutWith, SheetsInSet } from "./SheetsInSet.tsx";
import { StandardBasis } from "./StandardBasis.tsx";
import { type StandardColumn, standardWords } from "./words.ts";

type Bases = Reply<"catalogue.basis">["standards"];

/** How drawings look is the company's to say: nobody reads it in a document. */
const ofDrawings: ReadonlySet<string> = new Set([
  "generalNotes",
  "titleLine",
  "paper",
  ...Object.keys(drawingStyleWords),
]);

/** The company's standards for this route: name, value, meaning and basis of each. */
export function StandardsForm({ open }: { readonly open: OpenRoute }) {
  const session = useSession();
  const bases = useBases();
  const logoId = useId();
  const settings = settingsOf(open.route);
  const turnKind = (kind: SheetKind, isOut: boolean) =>
    void changeSettings(session, (now) => ({ sheetsLeftOut: leftOutWith(now.sheetsLeftOut, kind, isOut) }));
  const nameLayer = (layer: DrawnLayer, name: string) =>
    void changeSettings(session, (now) => ({ layerNames: withLayerName(now.layerNames, layer, name) }));
  return (
    <div className="settings-form">
      {Object.entries(standardWords).map(([column, [name, meaning]]) => {
        const value = settings[column as StandardColumn]; // the keys of standardWords
        const keep = (kept: Cell) => void runCommand(session, "settings.set", { values: { [column]: kept } });
        const own = {
          sheetsLeftOut: () => <SheetsInSet name={name} leftOut={settings.sheetsLeftOut} onTurn={turnKind} />,
          layerNames: () => <LayerNames names={settings.layerNames} onKeep={nameLayer} />,
          logo: () => <LogoField id={logoId} open={open} logo={settings.logo} onRemove={() => keep("")} />,
        }[column];
        if (own)
          return (
            <div key={column} className="setting">
              {column === "logo" ? (
                <label id={`${logoId}-name`} htmlFor={logoId}>
                  {name}
                </label>
              ) : (
                <span>{name}</span>
              )}
              <div>
                {own()}
                <p>{meaning}</p>
              </div>
            </div>
          );
        return (
          <FieldLine
            key={column}
            route={open.route}
            table="settings"
            column={column}
            value={value}
            units={unitsOf(open)}
            name={name}
            isLong={column === "generalNotes"}
            onKeep={keep}
          >
            <p>{meaning}</p>
            {bases !== null && !ofDrawings.has(column) && (
              <StandardBasis open={open} column={column as StandardColumn} value={value} shipped={bases[column]} />
            )}
          </FieldLine>
        );
      })}
    </div>
  );
}

/** What the program says of the values it brought; null until it has answered, so that no value is taken for the company's own. */
function useBases(): Bases | null {
  const { host } = useSession();
  const [bases, setBases] = useState<Bases | null>(null);
  useEffect(() => {
    void host.call("catalogue.basis", {}).then((reply) => {
      if (reply.ok) setBases(reply.value.standards);
    });
  }, [host]);
  return bases;
}
