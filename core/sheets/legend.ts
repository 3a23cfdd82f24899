import { redlined } from "./asBuilt/redlined.ts";
import type { Mark, PaperPoint } from "./paper/displayList.ts";
import { wrapText } from "./paper/fitText.ts";
import { dimension } from "./paper/furniture.ts";
import { labelMarks, labelSizeMm } from "./paper/labels.ts";
import { area, asParagraph, stroke, words } from "./paper/marks.ts";
import { panelHead, underHead } from "./paper/panel.ts";
import type { PaperBox } from "./paper/paper.ts";
import { closedPoleStroke, nailSymbol } from "./paper/pinSymbols.ts";
import {
  bondSymbol,
  closureSymbol,
  coilSymbol,
  findingSymbol,
  guySymbol,
  houseSymbol,
  levelSymbol,
  type PortTick,
  poleSymbol,
  structureSymbol,
  terminalBar,
  terminalBarMm,
} from "./paper/symbols.ts";
import { cloud, revisionTriangle } from "./revised/cloud.ts";
import { builtLetter } from "./revised/standing.ts";

type Entry = { readonly text: string; readonly draw: (centre: PaperPoint) => readonly Mark[] };

const columnCount = 2;
const symbolMm = 20;
const textMm = 2.2;
const leadMm = 3.3;

/** Every symbol of the plan with its meaning; as built, redlines where else changes are. */
export function legend(box: PaperBox, isAsBuilt: boolean): readonly Mark[] {
  const body = underHead(box);
  const entries = [...lasting, ...(isAsBuilt ? builtOtherwise : [changed]), goesOn];
  const rowCount = Math.ceil(entries.length / columnCount);
  const rowMm = (body.top - body.bottom) / rowCount;
  const columnMm = (body.right - body.left) / columnCount;
  const marks = entries.flatMap((entry, index) => {
    const left = body.left + Math.floor(index / rowCount) * columnMm;
    const y = body.top - ((index % rowCount) + 0.5) * rowMm;
    const lines = wrapText(entry.text, "plain", textMm, columnMm - symbolMm - 4);
    return [
      ...entry.draw([left + symbolMm / 2, y]),
      ...asParagraph(
        lines.map((text, line) =>
          words(text, [left + symbolMm + 3, y - textMm / 2 + ((lines.length - 1) / 2 - line) * leadMm], {
            heightMm: textMm,
          }),
        ),
      ),
    ];
  });
  return [...panelHead("Legend", box), ...marks];
}

const sampleTicks: readonly PortTick[] = Array.from({ length: 8 }, (_, index) => ({
  rank: Math.floor(index / 4),
  along: index % 4,
  used: index < 5,
  reserved: index === 7,
}));

function terminal([x, y]: PaperPoint): readonly Mark[] {
  const { width, height } = terminalBarMm(sampleTicks);
  return terminalBar(sampleTicks, [x - width / 2, y - height / 2]);
}

function pinned([x, y]: PaperPoint): readonly Mark[] {
  const { width } = terminalBarMm(sampleTicks);
  return [
    ...terminal([x - 4.5, y]),
    ...nailSymbol("terminals", [x - 4.5 + width / 2 + 1.4, y - 1.3]),
    ...houseSymbol([x + 5.5, y - 0.6], 5.4, 1, false),
    ...nailSymbol("units", [x + 5.5 + 1.8, y + 0.4]),
  ];
}

function crossing([x, y]: PaperPoint): readonly Mark[] {
  const outline: readonly PaperPoint[] = [
    [x - 3, y - 3],
    [x + 3, y - 3],
    [x + 3, y + 3],
    [x - 3, y + 3],
  ];
  return [
    area("crossings", null, outline, { fill: 0.92 }),
    ...[-3, 3].map((dx) =>
      stroke(
        "crossings",
        "thin",
        [
          [x + dx, y - 3],
          [x + dx, y + 3],
        ],
        { dashMm: [2.4, 1] },
      ),
    ),
    stroke("strand", "thick", [
      [x - 9, y],
      [x + 9, y],
    ]),
  ];
}

/** A sample outline, 5 x 3.4 mm, by the middle of its left side. */
function box(x: number, y: number): readonly PaperPoint[] {
  return [
    [x, y - 1.7],
    [x + 5, y - 1.7],
    [x + 5, y + 1.7],
    [x, y + 1.7],
  ];
}

const lasting: readonly Entry[] = [
  { text: "Pole", draw: (at) => poleSymbol(at, 0) },
  { text: "Pole with two other parties on it", draw: (at) => poleSymbol([at[0], at[1] - 0.8], 2) },
  {
    text: "Pole closed: no terminal hangs beside it",
    draw: (at) => [...poleSymbol(at, 0), closedPoleStroke(at)],
  },
  { text: "Guy with its anchor, and its lead", draw: ([x, y]) => guySymbol([x - 7, y], [x + 6, y]) },
  {
    text: "Bond of the strand to the pole's ground",
    draw: ([x, y]) => [
      ...poleSymbol([x - 3, y + 1], 0),
      stroke("poles", "fine", [
        [x - 1.7, y + 0.6],
        [x + 2, y - 0.4],
      ]),
      ...bondSymbol([x + 2, y - 1.3]),
    ],
  },
  {
    text: "Strand, with two cables lashed to it",
    draw: ([x, y]) => [
      stroke("strand", "thick", [
        [x - 9, y + 0.8],
        [x + 9, y + 0.8],
      ]),
      stroke("cable", "thin", [
        [x - 9, y - 0.35],
        [x + 9, y - 0.35],
      ]),
      stroke("cable", "thin", [
        [x - 9, y - 1.5],
        [x + 9, y - 1.5],
      ]),
    ],
  },
  { text: "Terminal: port used, reserved (struck), spare", draw: terminal },
  { text: "Terminal from the pole's centre line", draw: ([x, y]) => dimension([x - 4, y - 3.4], [x + 4, y - 3.4], 4) },
  { text: "Cable coil, with its length", draw: coilSymbol },
  { text: "Splice closure", draw: closureSymbol },
  {
    text: "House; a dot for each unit over one",
    draw: (at) => [
      ...houseSymbol(at, 6.4, 2, false),
      words("128", [at[0], at[1] - 1.85], { face: "narrow", heightMm: 2, align: "middle" }),
    ],
  },
  { text: "House beyond the edge of the sheet", draw: (at) => houseSymbol(at, 6.4, 1, true) },
  {
    text: "Drop, from its port to the house",
    draw: ([x, y]) => [
      stroke("drops", "fine", [
        [x - 9, y - 1],
        [x + 9, y + 1],
      ]),
    ],
  },
  { text: "Pinned: no layout moves it", draw: pinned },
  { text: "Crossing, with the least clearance found", draw: crossing },
  {
    text: "Building or sign: beside the line, under it",
    draw: ([x, y]) => [...structureSymbol(box(x - 7, y), true), ...structureSymbol(box(x + 2, y), false)],
  },
  { text: "Ground levelled in the span, its elevation", draw: ([x, y]) => levelSymbol([x, y - 0.8]) },
  {
    text: "Match line",
    draw: ([x, y]) => [
      stroke(
        "frame",
        "bold",
        [
          [x - 10, y],
          [x + 10, y],
        ],
        { dashMm: [7, 1.6, 1.2, 1.6] },
      ),
    ],
  },
  {
    text: "Finding: error, warning, note; see the list",
    draw: ([x, y]) => [
      ...findingSymbol("error", [x - 6, y]),
      ...findingSymbol("warning", [x, y]),
      ...findingSymbol("note", [x + 6, y]),
    ],
  },
];

const changed: Entry = {
  text: "Changed in revision B, since the one before",
  draw: ([x, y]) => [
    ...cloud({ left: x - 8.2, right: x + 0.6, bottom: y - 1.5, top: y + 1.5 }),
    ...revisionTriangle([x + 5.4, y], "B"),
  ],
};

/** The same cloud and triangle in a set drawn as built, and how its figures are told. */
const builtOtherwise: readonly Entry[] = [
  {
    text: "Built otherwise than designed",
    draw: ([x, y]) => [
      ...cloud({ left: x - 8.2, right: x + 0.6, bottom: y - 1.5, top: y + 1.5 }),
      ...revisionTriangle([x + 5.4, y], builtLetter),
    ],
  },
  {
    text: "As designed, struck; under it as built",
    draw: (centre) => {
      const lines = redlined("42 in", "36 in");
      return labelMarks(lines, { ...labelSizeMm(lines), centre, turnRad: 0 });
    },
  },
];

const goesOn: Entry = {
  text: "Line that goes on, on the sheet named",
  draw: ([x, y]) => [
    stroke("strand", "thick", [
      [x - 8, y],
      [x + 6, y],
    ]),
    stroke("frame", "thin", [
      [x + 6, y + 2],
      [x + 6.7, y + 0.5],
      [x + 5.3, y - 0.5],
      [x + 6, y - 2],
    ]),
  ],
};
