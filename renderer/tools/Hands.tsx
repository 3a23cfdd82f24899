import type { OpenRoute } from "../app/routeStore.ts";
import type { Picture } from "../canvas/paint.ts";
import { ArrangeCard } from "./arrange/ArrangeCard.tsx";
import { ArrangePreview } from "./arrange/ArrangePreview.tsx";
import { useArrangement } from "./arrange/useArrangement.ts";
import { ExactField } from "./ExactField.tsx";
import { HandChip } from "./HandChip.tsx";
import { KindsPanel } from "./KindsPanel.tsx";
import { MeasureCard } from "./MeasureCard.tsx";
import { NameField } from "./NameField.tsx";
import { Toast } from "./Toast.tsx";

/** What the tools show over the diagram. */
export function Hands({ open, picture }: { readonly open: OpenRoute; readonly picture: Picture }) {
  const arranged = useArrangement(open);
  return (
    <>
      {arranged && <ArrangePreview plant={open.plant} picture={picture} rows={arranged.arrangement.rows} />}
      <HandChip plant={open.plant} picture={picture} />
      <ExactField plant={open.plant} picture={picture} />
      <NameField open={open} picture={picture} />
      <div className="tool-cards">
        {arranged && <ArrangeCard open={open} {...arranged} />}
        <KindsPanel route={open.route} />
        <MeasureCard plant={open.plant} units={picture.units} />
      </div>
      <Toast />
    </>
  );
}
