import { useState } from "react";
import { Divider } from "../../app/Divider.tsx";
import type { OpenRoute } from "../../app/routeStore.ts";
import { useLowWindow } from "../../app/useLowWindow.ts";
import { useView } from "../../app/useSession.ts";
import { FindingsPanel } from "../FindingsPanel.tsx";

/** The findings along the lower edge. In a low window they give way to the closeout: their heading line stays, and unfolds them. */
export function FindingsBelow({ open }: { readonly open: OpenRoute }) {
  const isLow = useLowWindow();
  const givesWay = useView((state) => state.closeout.isOpen) && isLow;
  const [isUnfolded, setIsUnfolded] = useState(false);
  const isFolded = givesWay && !isUnfolded;
  const fold = givesWay ? { isFolded, toggle: () => setIsUnfolded(isFolded) } : null;
  return (
    <>
      {!isFolded && <Divider edge="findings" />}
      <FindingsPanel open={open} fold={fold} />
    </>
  );
}
