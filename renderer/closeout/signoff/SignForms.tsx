import type { Stage } from "../../../core/closeout/gates.ts";
import { nextLetter } from "../../../core/sheets/revised/nextLetter.ts";
import { runCommand } from "../../app/edits.ts";
import type { OpenRoute } from "../../app/routeStore.ts";
import { useSession } from "../../app/useSession.ts";
import { SignedForm } from "../../panels/revisions/SignedForm.tsx";
import { signOffWords } from "./words.ts";

type Done = { readonly onDone: () => void };

/** Signs for the route, by name and role. */
export function SignForm({ stage, onDone }: Done & { readonly stage: Stage }) {
  const session = useSession();
  return (
    <SignedForm
      name={signOffWords.sign(stage)}
      fields={[
        { key: "by", label: signOffWords.by, initial: "", isNeeded: true },
        { key: "role", label: signOffWords.role, initial: "", isNeeded: false },
        { key: "note", label: signOffWords.note, initial: "", isNeeded: false },
      ]}
      first="by"
      needed={signOffWords.neededName}
      send={() => signOffWords.sign(stage)}
      onSend={(values) =>
        runCommand(session, "signOff.sign", { signOffId: freshId("sign-off"), stage, atIso: now(), ...values })
      }
      onDone={onDone}
    />
  );
}

/** Opens a signed route again under the next revision. */
export function ReopenForm({ open, onDone }: Done & { readonly open: OpenRoute }) {
  const session = useSession();
  const [last] = [...open.route.revision.values()].sort((a, b) => b.number - a.number);
  return (
    <SignedForm
      name={signOffWords.reopen}
      fields={[
        { key: "letter", label: signOffWords.letter, initial: nextLetter(last?.letter), isNeeded: true },
        { key: "by", label: signOffWords.by, initial: "", isNeeded: true },
        { key: "reason", label: signOffWords.reason, initial: "", isNeeded: true },
      ]}
      first="by"
      needed={signOffWords.neededReason}
      send={() => signOffWords.reopen}
      onSend={(values) =>
        runCommand(session, "signOff.reopen", { revisionId: freshId("revision"), atIso: now(), ...values })
      }
      onDone={onDone}
    />
  );
}

const freshId = (kind: string): string => `${kind}-${crypto.randomUUID()}`;
const now = (): string => new Date().toISOString();
