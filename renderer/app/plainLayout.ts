import type { PanelLayout } from "../../core/contract/settingsMethods.ts";
import { plainBalance } from "../balance/balanceView.ts";
import { plainCloseout } from "../closeout/closeoutView.ts";
import { plainProfile } from "../profile/profileView.ts";
import { plainTables } from "../tables/tableHand.ts";
import { plainTraces } from "../trace/traceView.ts";

/** The panels beside the diagram as they stand before anybody moved them. */
export const plainPanels = { sideWidthPx: 320, findingsHeightPx: 232, isSideOpen: true, isFindingsOpen: true } as const;

/** All panels as they stand before anybody moved them. */
export const plainLayout: PanelLayout = {
  ...plainPanels,
  tablesFrac: plainTables.sizeFrac,
  areTablesBeside: plainTables.isBeside,
  profileFrac: plainProfile.sizeFrac,
  balanceFrac: plainBalance.sizeFrac,
  tracesFrac: plainTraces.sizeFrac,
  closeoutFrac: plainCloseout.sizeFrac,
};
