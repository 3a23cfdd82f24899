import type { PanelLayout } from "../../core/contract/settingsMethods.ts";

/** The panels as they stand before anybody moved them. */
export const plainLayout: PanelLayout = {
  sideWidthPx: 320,
  findingsHeightPx: 232,
  isSideOpen: true,
  isFindingsOpen: true,
};
