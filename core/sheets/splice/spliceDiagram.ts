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

/** An end with the block it stands in and its place among all ends of its side. */
type Placed = { readonly end: SpliceEnd; readonly block: EndBlock; readonly at: number };

/** Cuts a diagram into pieces that each fit a height: ends at the left in their order, each with what it is joined to. */
export function diagramPages(diagram: SpliceDiagram, heightMm: number): readonly SpliceDiagram[] {
  const [left, right] = [placed(diagram.left), placed(diagram.right)];
  const rightOf = new Map(right.map((one) => [one.end.key, one]));
  const joinsOf = new Map<string, Join[]>();
  for (const join of diagram.joins) joinsOf.set(join.from, [...(joinsOf.get(join.from) ?? []), join]);
  const partOf = (some: readonly Placed[]): SpliceDiagram => {
    const joins = some.flatMap((one) => joinsOf.get(one.end.key) ?? []);
    const joined = new Set(joins.flatMap((one) => rightOf.get(one.to) ?? []));
    return { left: blocksOf(some), right: blocksOf([...joined]), joins };
  };
  const pages: SpliceDiagram[] = [];
  let page: readonly Placed[] = [];
  for (const one of left) {
    const more = [...page, one];
    if (page.length > 0 && diagramHeightMm(partOf(more)) > heightMm) {
      pages.push(partOf(page));
      page = [one];
    } else page = more;
  }
  const last = partOf(page);
  const shown = new Set(last.joins.map((one) => one.to));
  const joined = new Set(diagram.joins.map((one) => one.to));
  const loose = right.filter((one) => !joined.has(one.end.key));
  const whole = { ...last, right: blocksOf([...right.filter((one) => shown.has(one.end.key)), ...loose]) };
  if (diagramHeightMm(whole) <= heightMm) return [...pages, whole];
  return [...pages, last, { left: [], right: blocksOf(loose), joins: [] }];
}

function placed(blocks: readonly EndBlock[]): readonly Placed[] {
  return blocks.flatMap((block) => block.ends.map((end) => ({ end, block }))).map((one, at) => ({ ...one, at }));
}

/** Ends in their order, gathered in their blocks. */
function blocksOf(some: readonly Placed[]): readonly EndBlock[] {
  const inOrder = [...some].sort((a, b) => a.at - b.at);
  const byBlock = new Map<EndBlock, SpliceEnd[]>();
  for (const { block, end } of inOrder) {
    const known = byBlock.get(block);
    if (known) known.push(end);
    else byBlock.set(block, [end]);
  }
  return [...byBlock].map(([{ title }, ends]) => ({ title, ends }));
}
