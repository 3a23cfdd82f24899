import { useEffect, useState } from "react";
import type { ImportReply } from "../../../core/contract/shapes.ts";
import type { Result } from "../../../core/model/result.ts";
import { kindOfName } from "../../app/dropping.ts";
import {
  base64Of,
  blankImport,
  type Importing,
  type ImportKind,
  keepColumns,
  keptColumns,
  planImport,
  takeImport,
} from "../../app/importing.ts";
import { showFault } from "../../app/session.ts";
import { useLookOnly } from "../../app/useLookOnly.ts";
import { useSession, useView } from "../../app/useSession.ts";
import { ImportPlanned } from "./ImportPlanned.tsx";
import { kindWords, words } from "./words.ts";

const importKinds: readonly ImportKind[] = [
  "pole",
  "livingUnit",
  "attachment",
  "crossing",
  "spanPair",
  "groundPoint",
  "structure",
  "guy",
  "wireSag",
  "dropCrossing",
];

/** Bringing data in: choose kind and file, see how it will be read and what is bad, then take it. */
export function ImportPanel() {
  const session = useSession();
  const [importing, setImporting] = useState<Importing>(blankImport);
  const [planned, setPlanned] = useState<Result<ImportReply> | null>(null);
  const [isTaking, setIsTaking] = useState(false);
  // a new file field for the next file
  const [takenCount, setTakenCount] = useState(0);
  useEffect(() => {
    if (importing.contentBase64 === "") return;
    let isLatest = true;
    void planImport(session, importing).then(async (answer) => {
      if (!isLatest) return;
      setPlanned(answer);
      if (!answer.ok || importing.areColumnsChosen) return;
      const columns = await keptColumns(session, importing.kind, answer.value.headings);
      if (isLatest && Object.keys(columns).length > 0) setImporting({ ...importing, columns, areColumnsChosen: true });
    });
    return () => {
      isLatest = false;
    };
  }, [session, importing]);

  const choose = async (file: File | undefined, kind = importing.kind): Promise<void> => {
    if (!file) return;
    const contentBase64 = await base64Of(file);
    setImporting({ ...importing, kind, fileName: file.name, contentBase64, columns: {}, areColumnsChosen: false });
  };
  const dropped = useView((state) => state.dropped);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a dropped file is taken up once
  useEffect(() => {
    if (!dropped) return;
    session.view.setState({ dropped: null });
    // oxlint-disable-next-line react/set-state-in-effect -- the state is set when the file has been read
    void choose(dropped, kindOfName(dropped.name));
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- a dropped file is taken up once
  }, [dropped]);
  const take = async (): Promise<void> => {
    setIsTaking(true);
    const taken = await takeImport(session, importing);
    setIsTaking(false);
    if (!taken.ok) return showFault(session, taken.fault);
    if (taken.value.problem) {
      setPlanned(taken);
      return showFault(session, taken.value.problem);
    }
    await keepColumns(session, importing.kind, taken.value);
    setPlanned(null);
    setImporting({ ...blankImport, kind: importing.kind });
    setTakenCount(takenCount + 1);
  };
  const plan = planned?.ok ? planned.value : null;
  const lookOnly = useLookOnly();
  const why = lookOnly ?? whyNot(planned, importing);

  return (
    <aside className="import" aria-label={words.title}>
      <header>
        <h2>{words.title}</h2>
        <button type="button" className="fix" onClick={() => session.view.setState({ isImportOpen: false })}>
          {words.close}
        </button>
      </header>
      <div className="import-choices">
        <label>
          <span>{words.lists}</span>
          <select
            value={importing.kind}
            onChange={(event) =>
              setImporting({ ...importing, kind: kindFrom(event.target.value), columns: {}, areColumnsChosen: false })
            }
          >
            {importKinds.map((kind) => (
              <option key={kind} value={kind}>
                {kindWords[kind]}
              </option>
            ))}
          </select>
        </label>
        <label>
          <span>{words.file}</span>
          <input
            key={takenCount}
            type="file"
            accept=".csv,.tsv,.txt,.xlsx,.geojson,.json,.kml,.kmz,.gpx"
            onChange={(event) => void choose(event.target.files?.[0])}
          />
        </label>
        <Options importing={importing} setImporting={setImporting} />
      </div>
      {importing.fileName !== "" && <p className="quiet">{importing.fileName}</p>}
      {importing.contentBase64 === "" && <p className="quiet">{words.chooseFile}</p>}
      {planned && !planned.ok && (
        <p className="problem" role="alert">
          <strong>{planned.fault.what}</strong> {planned.fault.mend}{" "}
          <span className="alert-where">{planned.fault.where}</span>
        </p>
      )}
      {plan && importing.contentBase64 !== "" && (
        <ImportPlanned
          plan={plan}
          onColumn={(field, heading) =>
            setImporting({ ...importing, columns: { ...importing.columns, [field]: heading }, areColumnsChosen: true })
          }
        />
      )}
      <footer>
        <button
          type="button"
          className="take"
          aria-disabled={why !== null || isTaking}
          aria-describedby="why-not-take"
          onClick={() => why === null && !isTaking && void take()}
        >
          {words.take(plan && plan.newCount + plan.changedCount)}
        </button>
        <span id="why-not-take" className="quiet">
          {why}
        </span>
      </footer>
    </aside>
  );
}

type Setting = { readonly importing: Importing; readonly setImporting: (next: Importing) => void };

function Options({ importing, setImporting }: Setting) {
  return (
    <>
      <label>
        <span>{words.lengthUnit}</span>
        <select
          value={importing.lengthUnit}
          onChange={(event) => setImporting({ ...importing, lengthUnit: unitFrom(event.target.value) })}
        >
          <option value="">{words.byHeadings}</option>
          <option value="ft">{words.feet}</option>
          <option value="m">{words.metres}</option>
        </select>
      </label>
      <label className="tick">
        <input
          type="checkbox"
          checked={importing.takesGood}
          onChange={(event) => setImporting({ ...importing, takesGood: event.target.checked })}
        />
        <span>{words.takeGood}</span>
      </label>
      <label className="tick">
        <input
          type="checkbox"
          checked={importing.replaces}
          onChange={(event) => setImporting({ ...importing, replaces: event.target.checked })}
        />
        <span>{words.replace}</span>
      </label>
    </>
  );
}

function whyNot(planned: Result<ImportReply> | null, { contentBase64 }: Importing): string | null {
  if (contentBase64 === "") return words.noFile;
  if (planned === null) return words.beingRead;
  if (!planned.ok) return words.unreadable;
  const { problem, newCount, changedCount } = planned.value;
  if (problem) return words.notAsItIs;
  return newCount + changedCount === 0 ? words.noChange : null;
}

function kindFrom(value: string): ImportKind {
  return importKinds.find((kind) => kind === value) ?? "pole";
}

function unitFrom(value: string): Importing["lengthUnit"] {
  return value === "ft" || value === "m" ? value : "";
}
