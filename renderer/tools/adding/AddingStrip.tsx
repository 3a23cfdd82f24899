import type { OpenRoute } from "../../app/routeStore.ts";
import { useSession } from "../../app/useSession.ts";
import { ModelChoice } from "../ModelChoice.tsx";
import { AddingFormFields } from "./AddingFormFields.tsx";
import type { AddingState } from "./addingState.ts";
import { hintOf, words } from "./words.ts";

/** What is in hand, what to click next, and what a click left to be filled in. */
export function AddingStrip({ adding, open }: { readonly adding: AddingState; readonly open: OpenRoute }) {
  const { view } = useSession();
  const { tool, form } = adding;
  return (
    <section className="adding-strip" aria-label={words.names[tool]}>
      <strong>{words.names[tool]}</strong>
      <output aria-live="polite">{hintOf(adding)}</output>
      {tool === "terminal" && (
        <ModelChoice
          open={open}
          modelId={adding.modelId}
          choose={(modelId) => view.setState({ adding: { ...adding, modelId } })}
        />
      )}
      {form && <AddingFormFields key={JSON.stringify(form)} form={form} open={open} />}
      <button type="button" className="fix" onClick={() => view.setState({ adding: null })}>
        {words.done}
      </button>
    </section>
  );
}
