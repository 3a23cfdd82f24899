import { useId, useState } from "react";
import { type DrawnLayer, drawnLayers } from "../../core/model/drawnLayers.ts";
import { layerNamesOf, layerNamesTrouble, withLayerName } from "../../core/model/layerNames.ts";
import { useLookOnly } from "../app/useLookOnly.ts";
import { drawingWords, layerWords } from "./drawingWords.ts";

type Names = {
  /** The names as the settings keep them. */
  readonly names: string;
  /** Takes a layer's name; empty for the program's own. */
  readonly onKeep: (layer: DrawnLayer, name: string) => void;
};

/** What each layer is called: one field each, empty for the program's own name. */
export function LayerNames({ names, onKeep }: Names) {
  return (
    <fieldset className="layer-names" aria-label={drawingWords.layers}>
      {drawnLayers.map((layer) => (
        <LayerName key={layer} layer={layer} names={names} onKeep={onKeep} />
      ))}
    </fieldset>
  );
}

/** One name: kept by Enter or on leaving it, given up by Escape. */
function LayerName({ layer, names, onKeep }: Names & { readonly layer: DrawnLayer }) {
  const id = useId();
  const lookOnly = useLookOnly();
  const [typed, setTyped] = useState<string | null>(null);
  const shown = layerNamesOf(names).get(layer) ?? "";
  const name = (typed ?? shown).trim().toUpperCase();
  const next = withLayerName(names, layer, name);
  const trouble = next === names ? null : layerNamesTrouble(next);
  const keep = (): void => {
    if (trouble !== null) return;
    if (next !== names) onKeep(layer, name);
    setTyped(null);
  };
  return (
    <div>
      <label htmlFor={id}>{layerWords[layer]}</label>
      <input
        id={id}
        value={typed ?? shown}
        placeholder={layer.toUpperCase()}
        readOnly={lookOnly !== null}
        title={lookOnly ?? undefined}
        aria-invalid={trouble !== null}
        aria-describedby={trouble === null ? undefined : `${id}-what`}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={keep}
        onKeyDown={(event) => {
          if (event.key === "Enter") keep();
          if (event.key !== "Escape" || typed === null) return;
          event.stopPropagation();
          setTyped(null);
        }}
      />
      {trouble !== null && (
        <p id={`${id}-what`} className="setting-wrong" role="alert">
          {drawingWords.notHere(trouble)}
        </p>
      )}
    </div>
  );
}
