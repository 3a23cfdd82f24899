import type { OpenRoute } from "../../app/routeStore.ts";
import { useSession } from "../../app/useSession.ts";
import { AddingFormFields } from "./AddingFormFields.tsx";
import type { AddingState } from "./addingState.ts";
import { usualModelId } from "./clickWith.ts";
import { hintOf, words } from "./words.ts";

/** What is in hand, what to click next, and what a click left to be filled in. */
export function AddingStrip({ adding, open }: { readonly adding: AddingState; readonly open: OpenRoute }) {
  const { view } = useSession();
  const { tool, form } = adding;
  return (
    <section className="adding-strip" aria-label={words.names[tool]}>
      <strong>{words.names[tool]}</strong>
      <output aria-live="polite">{hintOf(adding)}</output>
      {tool === "terminal" && <ModelChoice adding={adding} open={open} />}
      {form && <AddingFormFields key={JSON.stringify(form)} form={form} open={open} />}
      <button type="button" className="fix" onClick={() => view.setState({ adding: null })}>
        {words.done}
      </button>
    </section>
  );
}

function ModelChoice({ adding, open }: { readonly adding: AddingState; readonly open: OpenRoute }) {
  const { view } = useSession();
  const models = [...open.route.terminalModel.values()].sort((a, b) => a.portCount - b.portCount);
  return (
    <label>
      {words.model}
      <select
        value={adding.modelId ?? usualModelId(open.route) ?? ""}
        onChange={(event) => view.setState({ adding: { ...adding, modelId: event.target.value } })}
      >
        {models.map((one) => (
          <option key={one.id} value={one.id}>
            {one.name}
          </option>
        ))}
      </select>
    </label>
  );
}
