import { X } from "lucide-react";
import { Tip } from "./Tip.tsx";

/** The cross that puts a thing away; its name says which. */
export function CloseButton({ name, onPress }: { readonly name: string; readonly onPress: () => void }) {
  return (
    <Tip name={name}>
      <button type="button" className="act" aria-label={name} onClick={onPress}>
        <X size={16} aria-hidden="true" />
      </button>
    </Tip>
  );
}
