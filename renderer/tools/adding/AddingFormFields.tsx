import { useEffect, useRef, useState } from "react";
import { freshIds } from "../../../core/model/freshId.ts";
import type { TableName } from "../../../core/model/tables.ts";
import { formatLength } from "../../../core/units/formatLength.ts";
import { parseLengthM } from "../../../core/units/parseLength.ts";
import type { UnitSystem } from "../../../core/units/unitSystem.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { unitsOf } from "../../app/session.ts";
import { useSession } from "../../app/useSession.ts";
import type { AddingForm } from "./addingState.ts";
import { add } from "./clickWith.ts";
import { words } from "./words.ts";

type Typed = Readonly<Record<string, string>>;

type Field = { readonly name: string; readonly label: string; readonly choices?: Readonly<Record<string, string>> };

/** The edit a filled form asks for, or why it cannot be asked yet. */
type Asked =
  | { readonly commandId: string; readonly table: TableName; readonly id: string; readonly input: object }
  | { readonly field: string; readonly trouble: string };

const fields: Readonly<Record<AddingForm["kind"], readonly Field[]>> = {
  crossing: [
    { name: "surface", label: words.surface, choices: words.surfaces },
    { name: "name", label: words.name },
    { name: "width", label: words.width },
  ],
  attachment: [
    { name: "owner", label: words.owner },
    { name: "kind", label: words.kind, choices: words.kinds },
    { name: "height", label: words.height },
  ],
  unit: [{ name: "address", label: words.address }],
};

/** The few fields a click leaves open; Enter adds, Escape gives up. */
export function AddingFormFields({ form, open }: { readonly form: AddingForm; readonly open: OpenRoute }) {
  const session = useSession();
  const units = unitsOf(open);
  const first = useRef<HTMLInputElement & HTMLSelectElement>(null);
  const [typed, setTyped] = useState<Typed>(() => startOf(form, units));
  const [trouble, setTrouble] = useState<{ readonly field: string; readonly trouble: string } | null>(null);
  useEffect(() => first.current?.focus(), []);
  const submit = async (): Promise<void> => {
    const asked = askedBy(form, typed, open);
    if ("trouble" in asked) return setTrouble(asked);
    const { commandId, input, table, id } = asked;
    if (!(await add(session, commandId, input, table, id))) return;
    session.view.setState(({ adding }) => ({ adding: adding && { ...adding, form: null } }));
    document.querySelector<HTMLElement>("[data-diagram]")?.focus();
  };
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void submit();
      }}
    >
      {fields[form.kind].map(({ name, label, choices }, i) => {
        const common = {
          id: `adding-${name}`,
          ref: i === 0 ? first : null,
          value: typed[name] ?? "",
          "aria-invalid": trouble?.field === name,
          "aria-describedby": trouble?.field === name ? "adding-trouble" : undefined,
          onChange: (event: { readonly target: { readonly value: string } }) =>
            setTyped((before) => ({ ...before, [name]: event.target.value })),
        };
        return (
          <label key={name} htmlFor={`adding-${name}`}>
            {label}
            {choices ? (
              <select {...common}>
                {Object.entries(choices).map(([value, shown]) => (
                  <option key={value} value={value}>
                    {shown}
                  </option>
                ))}
              </select>
            ) : (
              <input {...common} size={name === "address" ? 24 : 11} />
            )}
          </label>
        );
      })}
      <button type="submit" className="fix">
        {words.add}
      </button>
      {trouble && (
        <span id="adding-trouble" role="alert">
          {trouble.trouble}
        </span>
      )}
    </form>
  );
}

function startOf(form: AddingForm, units: UnitSystem): Typed {
  switch (form.kind) {
    case "crossing":
      return { surface: "road", name: "", width: formatLength(form.widthM, units, "height") };
    case "attachment":
      return { owner: "", kind: "communication", height: "" };
    case "unit":
      return { address: "" };
  }
}

function askedBy(form: AddingForm, typed: Typed, { route }: OpenRoute): Asked {
  const units = route.settings.get("settings")?.unitSystem ?? "us";
  const text = (name: string): string => (typed[name] ?? "").trim();
  switch (form.kind) {
    case "crossing": {
      const isAsDrawn = text("width") === formatLength(form.widthM, units, "height");
      const widthM = isAsDrawn ? form.widthM : lengthM(text("width"), units);
      if (widthM === null) return { field: "width", trouble: words.needsLength };
      const id = freshIds(route, "crossing")();
      const { spanId, offsetM } = form;
      const row = { spanId, offsetM, widthM, name: text("name"), surface: text("surface"), surfaceM: null };
      return { commandId: "crossing.add", table: "crossing", id, input: { crossingId: id, ...row } };
    }
    case "attachment": {
      const heightM = lengthM(text("height"), units);
      if (heightM === null) return { field: "height", trouble: words.needsLength };
      const id = freshIds(route, "attachment")();
      const row = { poleId: form.poleId, owner: text("owner"), kind: text("kind"), heightM, voltageV: 0, note: "" };
      return { commandId: "attachment.add", table: "attachment", id, input: { attachmentId: id, ...row } };
    }
    case "unit": {
      if (text("address") === "") return { field: "address", trouble: words.needsAddress };
      const id = freshIds(route, "livingUnit")();
      const { eastM, northM } = form.at;
      const row = {
        address: text("address"),
        eastM,
        northM,
        kind: "home",
        building: "",
        attachHeightM: null,
        groundM: null,
        note: "",
      };
      return { commandId: "unit.add", table: "livingUnit", id, input: { livingUnitId: id, ...row } };
    }
  }
}

function lengthM(text: string, units: UnitSystem): number | null {
  const read = parseLengthM(text, units);
  return read.ok && read.valueM > 0 ? read.valueM : null;
}
