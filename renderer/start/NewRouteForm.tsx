import { useState } from "react";
import type { Reply } from "../../core/contract/contract.ts";
import { makeRoute } from "../app/files.ts";
import { useSession } from "../app/useSession.ts";
import { BrowseFolders, type Listing } from "./BrowseFolders.tsx";
import { FromTemplate, type TemplateFile } from "./FromTemplate.tsx";
import { words } from "./words.ts";

type Choices = Pick<Reply<"files.start">, "clearanceSets" | "loadingDistricts">;

/** A new route: its name, place and standards, and the folder its file goes to. */
export function NewRouteForm({ clearanceSets, loadingDistricts }: Choices) {
  const session = useSession();
  const [routeName, setRouteName] = useState("");
  const [place, setPlace] = useState("");
  const [fileName, setFileName] = useState<string | null>(null);
  const [unitSystem, setUnitSystem] = useState<"us" | "metric">("us");
  const [clearanceSetId, setClearanceSetId] = useState(clearanceSets[0]?.id ?? "");
  const [loadingDistrictId, setLoadingDistrictId] = useState(loadingDistricts[0]?.id ?? "");
  const [template, setTemplate] = useState<TemplateFile | null>(null);
  const [folder, setFolder] = useState<Listing["folder"] | null>(null);
  const shownName = fileName ?? nameFor(routeName);
  const cannot = routeName.trim() === "" || folder === null;
  const make = (thenImport: boolean): void => {
    if (cannot || folder === null) return;
    const standards = template ? { template } : { clearanceSetId, loadingDistrictId };
    const made = { routeName: routeName.trim(), place: place.trim(), unitSystem, ...standards };
    void makeRoute(session, { ...made, folderId: folder.entryId, fileName: shownName }, thenImport);
  };
  return (
    <form
      className="new-route"
      aria-label={words.newRoute}
      onSubmit={(event) => {
        event.preventDefault();
        make(false);
      }}
    >
      <div className="new-fields">
        <Field label={words.routeName} value={routeName} onChange={setRouteName} />
        <Field label={words.place} value={place} onChange={setPlace} />
        <label>
          <span>{words.units}</span>
          <select value={unitSystem} onChange={(event) => setUnitSystem(event.target.value === "us" ? "us" : "metric")}>
            <option value="us">{words.us}</option>
            <option value="metric">{words.metric}</option>
          </select>
        </label>
        {template === null && (
          <>
            <Choice
              label={words.clearanceSet}
              value={clearanceSetId}
              from={clearanceSets}
              onChange={setClearanceSetId}
            />
            <Choice
              label={words.loadingDistrict}
              value={loadingDistrictId}
              from={loadingDistricts}
              onChange={setLoadingDistrictId}
            />
          </>
        )}
        <Field label={words.fileName} value={shownName} onChange={setFileName} />
      </div>
      <FromTemplate template={template} onChange={setTemplate} />
      <BrowseFolders onFolder={(listing) => setFolder(listing.folder)} />
      <footer>
        <button type="submit" className="take" aria-disabled={cannot} aria-describedby="why-not-make">
          {words.make}
        </button>
        <button type="button" className="fix" aria-disabled={cannot} onClick={() => make(true)}>
          {words.makeAndImport}
        </button>
        <span id="why-not-make" className="quiet">
          {routeName.trim() === "" ? words.needsName : ""}
        </span>
      </footer>
    </form>
  );
}

type FieldProps = { readonly label: string; readonly value: string; readonly onChange: (value: string) => void };

function Field({ label, value, onChange }: FieldProps) {
  return (
    <label>
      <span>{label}</span>
      <input type="text" value={value} onChange={(event) => onChange(event.target.value)} />
    </label>
  );
}

function Choice({ label, value, from, onChange }: FieldProps & { readonly from: Choices["clearanceSets"] }) {
  return (
    <label>
      <span>{label}</span>
      <select value={value} onChange={(event) => onChange(event.target.value)}>
        {from.map((one) => (
          <option key={one.id} value={one.id}>
            {one.name}
          </option>
        ))}
      </select>
    </label>
  );
}

/** A file name out of a route's name, in characters every system takes. */
function nameFor(routeName: string): string {
  const bare = routeName
    .trim()
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "");
  return bare === "" ? "" : `${bare}.strand`;
}
