import { chooseAndShow } from "../app/look.ts";
import type { RefKey } from "../app/ref.ts";
import { useSession } from "../app/useSession.ts";
import { fullScalePxPerM } from "../canvas/viewport.ts";

/** The name of a row; pressing it chooses the row and shows where it is. */
export function RefButton({ to, children }: { readonly to: RefKey; readonly children: string }) {
  const session = useSession();
  return (
    <button type="button" className="ref" onClick={() => chooseAndShow(session, [to], fullScalePxPerM)}>
      {children}
    </button>
  );
}
