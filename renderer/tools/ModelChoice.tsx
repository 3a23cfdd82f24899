import type { KeyboardEvent } from "react";
import type { OpenRoute } from "../app/routeStore.ts";
import { usualModelId } from "./adding/clickWith.ts";
import { toolWords } from "./words.ts";

type Props = {
  readonly open: OpenRoute;
  /** The model chosen; null where the usual one of the route is to hang. */
  readonly modelId: string | null;
  readonly choose: (modelId: string) => void;
  readonly onKeyDown?: (event: KeyboardEvent<HTMLSelectElement>) => void;
};

/** Which model of terminal is to be hung, smallest first. */
export function ModelChoice({ open, modelId, choose, onKeyDown }: Props) {
  const models = [...open.route.terminalModel.values()].sort((a, b) => a.portCount - b.portCount);
  return (
    <label>
      {toolWords.model}
      <select
        value={modelId ?? usualModelId(open.route) ?? ""}
        onKeyDown={onKeyDown}
        onChange={(event) => choose(event.target.value)}
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
