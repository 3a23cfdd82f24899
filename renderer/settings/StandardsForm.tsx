import { useEffect, useState } from "react";
import type { Reply } from "../../core/contract/contract.ts";
import { settingsOf } from "../../core/model/route.ts";
import { runCommand } from "../app/edits.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { unitsOf } from "../app/session.ts";
import { useSession } from "../app/useSession.ts";
import { FieldLine } from "./FieldLine.tsx";
import { markWords, type StandardColumn, standardWords, words } from "./words.ts";

type Bases = Reply<"catalogue.basis">["standards"];

/** The company's standards for this route: name, value, meaning and basis of each. */
export function StandardsForm({ open }: { readonly open: OpenRoute }) {
  const session = useSession();
  const bases = useBases();
  const settings = settingsOf(open.route);
  return (
    <div className="settings-form">
      {Object.entries(standardWords).map(([column, [name, meaning]]) => {
        const value = settings[column as StandardColumn]; // the keys of standardWords
        return (
          <FieldLine
            key={column}
            route={open.route}
            table="settings"
            column={column}
            value={value}
            units={unitsOf(open)}
            name={name}
            onKeep={(kept) => void runCommand(session, "settings.set", { values: { [column]: kept } })}
          >
            <p>{meaning}</p>
            {bases[column] && <p className="quiet">{basisWords(bases[column], value)}</p>}
          </FieldLine>
        );
      })}
    </div>
  );
}

function useBases(): Bases {
  const { host } = useSession();
  const [bases, setBases] = useState<Bases>({});
  useEffect(() => {
    void host.call("catalogue.basis", {}).then((reply) => {
      if (reply.ok) setBases(reply.value.standards);
    });
  }, [host]);
  return bases;
}

/** Where a standard comes from; one that is no longer what the program brought is the company's own. */
function basisWords(basis: Bases[string], value: string | number): string {
  if (basis.value !== value) return `${words.basis}: ${words.ownValue} (${markWords.practice})`;
  const source = [basis.document, basis.clause, basis.edition].filter((one) => one !== "").join(", ");
  return `${words.basis}: ${source} (${markWords[basis.mark]})`;
}
