import type { Fault } from "../../../core/model/result.ts";
import { tell } from "../../app/session.ts";
import { useOpenRoute, useSession, useView } from "../../app/useSession.ts";
import { withLocalTimes } from "../../start/words.ts";
import { CloseButton } from "../CloseButton.tsx";
import { mendOf } from "./mendOf.ts";
import { whereWords } from "./rowsNamed.ts";
import { namelessCodes, plainWords, words } from "./words.ts";

/** What could not be done: what, where, and what to do about it. Stays until it is put away or the next thing succeeds. */
export function AlertStrip() {
  const fault = useView((state) => state.fault);
  return (
    <div role="alert" className={fault ? "alert" : "only-heard"}>
      {fault && <Told fault={fault} />}
    </div>
  );
}

function Told({ fault }: { readonly fault: Fault }) {
  const session = useSession();
  const open = useOpenRoute();
  const plain = plainWords[fault.code];
  const isNamed = plain === undefined && !namelessCodes.has(fault.code);
  const where = open ? whereWords(open.plant, fault.where) : fault.where;
  const mend = mendOf(session, fault);
  const putAway = (): void => session.view.setState({ fault: null });
  const copy = async (): Promise<void> => {
    const { code, what, mend: advice } = fault;
    await navigator.clipboard.writeText([what, advice, `${fault.where} (${code})`].join("\n"));
    tell(session, words.copied);
  };
  return (
    <>
      <p>
        <strong>{plain ?? withLocalTimes(fault.what)}</strong> {fault.mend} {isNamed && <Where>{where}</Where>}
      </p>
      {mend && (
        <button
          type="button"
          className="fix"
          onClick={() => {
            putAway();
            void mend.run();
          }}
        >
          {mend.name}
        </button>
      )}
      <button type="button" className="fix" onClick={() => void copy()}>
        {words.copy}
      </button>
      <CloseButton name={words.putAway} onPress={putAway} />
    </>
  );
}

function Where({ children }: { readonly children: string }) {
  return <span className="alert-where">{children}</span>;
}
