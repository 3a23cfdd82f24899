import { useState } from "react";
import { runCommand } from "../app/edits.ts";
import { chooseAndShow } from "../app/look.ts";
import type { RefKey } from "../app/ref.ts";
import type { OpenRoute } from "../app/routeStore.ts";
import { useSession, useView } from "../app/useSession.ts";
import { screenPoint } from "../canvas/hitTest.ts";
import type { Picture } from "../canvas/paint.ts";
import { DiagramField, focusDiagram } from "./DiagramField.tsx";
import { nameField, nextOfKind } from "./inPlace.ts";
import { toolWords } from "./words.ts";

type Props = { readonly open: OpenRoute; readonly picture: Picture };

/** The tag, name or address that is a field on the diagram now. */
export function NameField({ open, picture }: Props) {
  const inPlace = useView((state) => state.inPlace);
  return inPlace === null ? null : <OneName key={inPlace} name={inPlace} open={open} picture={picture} />;
}

function OneName({ name, open, picture }: Props & { readonly name: RefKey }) {
  const session = useSession();
  const field = nameField(open.plant, name);
  const [text, setText] = useState(field?.value ?? "");
  const at = screenPoint(picture, name);
  if (!field || !at) return null;
  const problem = text.trim() === "" && !/^(crossing|structure)\//.test(name) ? toolWords.empty : null;
  const keep = async (): Promise<boolean> => {
    if (problem !== null) return false;
    const { command, input } = field.edit(text.trim());
    return text.trim() === field.value || runCommand(session, command, input);
  };
  const close = (): void => {
    session.view.setState({ inPlace: null });
    focusDiagram();
  };
  const goOn = async (step: 1 | -1): Promise<void> => {
    if (!(await keep())) return;
    const next = nextOfKind(open.route, name, step);
    chooseAndShow(session, [next]);
    session.view.setState({ inPlace: next });
  };
  return (
    <DiagramField
      label={field.label}
      value={text}
      problem={problem}
      leftPx={at[0] + 12}
      topPx={at[1] - 30}
      isChosen
      onChange={setText}
      onKeep={() => void keep().then((isKept) => isKept && close())}
      onGiveUp={close}
      onTab={(step) => void goOn(step)}
    />
  );
}
