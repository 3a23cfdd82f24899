import { X } from "lucide-react";
import { useSession, useView } from "../app/useSession.ts";
import { panelWords } from "./words.ts";

/** What could not be done: what, where, how to mend it. Stays until it is put away or the next thing succeeds. */
export function AlertStrip() {
  const { view } = useSession();
  const fault = useView((state) => state.fault);
  return (
    <div role="alert" className={fault ? "alert" : "only-heard"}>
      {fault && (
        <>
          <p>
            <strong>{fault.what}</strong> {fault.mend} <span className="alert-where">{fault.where}</span>
          </p>
          <button
            type="button"
            className="act"
            aria-label={panelWords.putAway}
            onClick={() => view.setState({ fault: null })}
          >
            <X size={16} aria-hidden="true" />
          </button>
        </>
      )}
    </div>
  );
}
