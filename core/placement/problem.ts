/** A terminal model a point may take: it holds `capacity` ports in use and costs `cost`. */
export type Module = { readonly capacity: number; readonly cost: number };

/** A hanging point (facility): the modules it may take, by growing capacity, none dearer than a larger one. */
export type Point = { readonly modules: readonly Module[] };

/**
 * Single-source capacitated facility location with modules, on a sparse graph: each unit on exactly one point, at most one module
 * a point, its capacity at least the demand on it; least modules plus arcs. Points and units stand in order along the strand where
 * there is one. The arcs of unit j are `firstArc[j]` up to `firstArc[j + 1]` in `arcPoint` and `arcCost`, by growing point. No cost is
 * below nothing.
 */
export type Problem = {
  readonly points: readonly Point[];
  /** by unit, whole numbers of ports */
  readonly demand: Int32Array;
  readonly firstArc: Int32Array;
  readonly arcPoint: Int32Array;
  readonly arcCost: Float64Array;
  /** when given, exactly this many points are open (capacitated p-median) */
  readonly openExactly?: number;
};

/** A layout of a problem: the point of each unit, what it costs, and a proven lower bound of any layout's cost. */
export type Placement = {
  readonly pointOf: Int32Array;
  readonly cost: number;
  readonly bound: number;
};

/** The clock and the stop button of a search, handed in: this room has neither. */
export type Watch = {
  readonly elapsedS: () => number;
  /** true when the search is to end with what it has */
  readonly stopped: () => boolean;
  /** hears each better layout or bound as it comes */
  readonly better?: (placement: Placement) => void;
};
