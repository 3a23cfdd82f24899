import { useEffect, useRef, useState } from "react";
import type { OpenRoute } from "../../app/routeStore.ts";
import { unitsOf } from "../../app/session.ts";
import { useSession } from "../../app/useSession.ts";
import { type AddingForm, formDone } from "./addingState.ts";
import { add, goOnFrom } from "./clickWith.ts";
import { askedBy, startOf, type Typed } from "./formEdits.ts";
import { fieldsOf } from "./formFields.ts";
import { words } from "./words.ts";

/** The few fields a click leaves open; Enter adds, Escape gives up. */
export function AddingFormFields({ form, open }: { readonly form: AddingForm; readonly open: OpenRoute }) {
  const session = useSession();
  const units = unitsOf(open);
  const first = useRef<HTMLInputElement & HTMLSelectElement>(null);
  const [typed, setTyped] = useState<Typed>(() => startOf(form, open, units));
  const [trouble, setTrouble] = useState<{ readonly field: string; readonly trouble: string } | null>(null);
  useEffect(() => first.current?.focus(), []);
  const submit = async (): Promise<void> => {
    const tool = session.view.getState().adding?.tool ?? "pole";
    const asked = askedBy(form, typed, open, tool);
    if ("trouble" in asked) return setTrouble(asked);
    const { commandId, input, table, id } = asked;
    if (!(await add(session, commandId, input, table, id))) return;
    session.view.setState(({ adding }) => ({ adding: adding && formDone(adding) }));
    if (form.kind === "reach") goOnFrom(session, id);
    document.querySelector<HTMLElement>("[data-diagram]")?.focus();
  };
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void submit();
      }}
    >
      {fieldsOf(form, open, units).map(({ name, label, choices }, i) => {
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
