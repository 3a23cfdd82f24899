/** What the closeout shows: how far the route has come, what is to be mended, what the sheath's marks say. */
export const closeoutTabs = ["board", "punch", "sheath"] as const;
export type CloseoutTab = (typeof closeoutTabs)[number];

export const boardFilters = ["all", "missing", "deviating"] as const;
export type BoardFilter = (typeof boardFilters)[number];

export const punchFilters = ["open", "done", "all"] as const;
export type PunchFilter = (typeof punchFilters)[number];

/** What the eye and hand are at in the closeout; never part of the route. */
export type CloseoutView = {
  readonly isOpen: boolean;
  /** Part of the height it takes. */
  readonly sizeFrac: number;
  readonly tab: CloseoutTab;
  readonly filter: BoardFilter;
  /** Row of the board under the hand; null for none. */
  readonly rowId: string | null;
  /** Whether the readings of that row are being written down. */
  readonly isEntering: boolean;
  readonly punchFilter: PunchFilter;
  readonly punchId: string | null;
  readonly cableId: string | null;
  /** Who reads and signs, as last written. */
  readonly by: string;
};

export const plainCloseout: CloseoutView = {
  isOpen: false,
  sizeFrac: 0.6,
  tab: "board",
  filter: "all",
  rowId: null,
  isEntering: false,
  punchFilter: "open",
  punchId: null,
  cableId: null,
  by: "",
};
