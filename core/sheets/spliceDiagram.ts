/** A fiber, or fibers that go the same way, at one side of a splice. */
export type SpliceEnd = {
  /** Unique in its diagram. */
  readonly key: string;
  /** The tube it lies in; null where it is no single tube's. */
  readonly tube: number | null;
  /** Its number in the cable and its place in the tube; null where it is not one fiber. */
  readonly fiber: { readonly number: number; readonly place: number } | null;
  /** What it is, where it is not one fiber; else what is behind it. */
  readonly text: string;
};

/** Ends that stand together: those of a cable, or of an output of the hub. */
export type EndBlock = { readonly title: string; readonly ends: readonly SpliceEnd[] };

/** Two ends that are one way of light: fused here, or never cut. */
export type Join = { readonly from: string; readonly to: string; readonly isSpliced: boolean };

/** What comes in, what goes on, and how they are joined. */
export type SpliceDiagram = {
  readonly left: readonly EndBlock[];
  readonly right: readonly EndBlock[];
  readonly joins: readonly Join[];
};

/** Paper the parts of one side take from top to bottom, mm. */
export const sideMm = { title: 6.4, end: 4.3, tubeGap: 1.5, blockGap: 2.6 } as const;

/** Height of one side, mm. */
function sideHeightMm(blocks: readonly EndBlock[]): number {
  return blocks.reduce((sum, { ends }, index) => {
    const gaps = ends.filter((one, at) => at > 0 && one.tube !== ends[at - 1]?.tube).length;
    return sum + (index > 0 ? sideMm.blockGap : 0) + sideMm.title + ends.length * sideMm.end + gaps * sideMm.tubeGap;
  }, 0);
}

/** Height of a diagram, mm. */
export function diagramHeightMm({ left, right }: SpliceDiagram): number {
  return Math.max(sideHeightMm(left), sideHeightMm(right));
}

/** Cuts a diagram into pieces that each fit a height: ends at the left in their order, each with what it is joined to. */
export function diagramPages(diagram: SpliceDiagram, heightMm: number): readonly SpliceDiagram[] {
  const joined = new Set(diagram.joins.flatMap((one) => [one.from, one.to]));
  const pages: SpliceDiagram[] = [];
  let keys = new Set<string>();
  for (const end of diagram.left.flatMap((one) => one.ends)) {
    const more = new Set([...keys, end.key]);
    if (keys.size > 0 && diagramHeightMm(partOf(diagram, more)) > heightMm) {
      pages.push(partOf(diagram, keys));
      keys = new Set([end.key]);
    } else keys = more;
  }
  const loose = onlyEnds(diagram.right, (one) => !joined.has(one.key));
  const last = partOf(diagram, keys);
  const whole = { ...last, right: withLoose(diagram.right, last, loose) };
  if (diagramHeightMm(whole) <= heightMm) return [...pages, whole];
  return [...pages, last, { left: [], right: loose, joins: [] }];
}

/** Some ends of the left side with the ends they are joined to. */
function partOf({ left, right, joins }: SpliceDiagram, keys: ReadonlySet<string>): SpliceDiagram {
  const own = joins.filter((one) => keys.has(one.from));
  const to = new Set(own.map((one) => one.to));
  return {
    left: onlyEnds(left, (one) => keys.has(one.key)),
    right: onlyEnds(right, (one) => to.has(one.key)),
    joins: own,
  };
}

function withLoose(right: readonly EndBlock[], last: SpliceDiagram, loose: readonly EndBlock[]): readonly EndBlock[] {
  const kept = new Set([...last.right, ...loose].flatMap((block) => block.ends.map((one) => one.key)));
  return onlyEnds(right, (one) => kept.has(one.key));
}

function onlyEnds(blocks: readonly EndBlock[], isKept: (end: SpliceEnd) => boolean): readonly EndBlock[] {
  return blocks.map(({ title, ends }) => ({ title, ends: ends.filter(isKept) })).filter((one) => one.ends.length > 0);
}
