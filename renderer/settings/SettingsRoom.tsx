import { useState } from "react";
import { type CatalogueName, catalogueNames } from "../../core/model/catalogueNames.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { useLookOnly } from "../app/useLookOnly.ts";
import { useSession } from "../app/useSession.ts";
import { FileButton } from "../panels/FileButton.tsx";
import { CatalogueForm } from "./CatalogueForm.tsx";
import { StandardsForm } from "./StandardsForm.tsx";
import { exportTemplate, importTemplate } from "./template.ts";
import { catalogueWords, words } from "./words.ts";

/** Standards and catalogues in place of the diagram: sections at the left, the chosen one at the right. */
export function SettingsRoom({ open }: { readonly open: OpenRoute }) {
  const [section, setSection] = useState<CatalogueName | "standards">("standards");
  const sections = ["standards" as const, ...catalogueNames];
  return (
    <section className="settings" aria-label={words.title}>
      <nav aria-label={words.sections}>
        <h2>{words.title}</h2>
        <ol>
          {sections.map((one) => (
            <li key={one}>
              <button type="button" aria-current={one === section} onClick={() => setSection(one)}>
                {one === "standards" ? words.standards : catalogueWords[one]}
              </button>
            </li>
          ))}
        </ol>
        <Acts />
      </nav>
      {section === "standards" ? (
        <StandardsForm open={open} />
      ) : (
        <CatalogueForm key={section} open={open} table={section} />
      )}
    </section>
  );
}

function Acts() {
  const session = useSession();
  const lookOnly = useLookOnly();
  return (
    <div className="settings-acts">
      <button type="button" className="fix" onClick={() => void exportTemplate(session)}>
        {words.exportAll}
      </button>
      <FileButton
        label={words.importAll}
        accept=".json"
        isOff={lookOnly !== null}
        title={lookOnly ?? undefined}
        onFiles={([file]) => {
          if (file) void importTemplate(session, file);
        }}
      />
      <button type="button" className="fix" onClick={() => session.view.setState({ isSettingsOpen: false })}>
        {words.close}
      </button>
    </div>
  );
}
