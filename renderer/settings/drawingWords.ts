import type { drawingStyle } from "../../core/model/drawingStyle.ts";
import type { DrawnLayer } from "../../core/model/drawnLayers.ts";

/** How a company's drawings look: each standard's name, and what it means on paper. */
export const drawingStyleWords: Readonly<Record<keyof typeof drawingStyle, readonly [name: string, meaning: string]>> =
  {
    logo: [
      "Logo",
      "Stands in the title block of every sheet, over the company's name. PNG, JPEG or plain SVG, up to 500 kB.",
    ],
    newLineMm: [
      "Lines of what is new",
      "The strand's weight on paper. Cables, terminals, coils and drops go along, each as much finer as it is now.",
    ],
    existingLineMm: [
      "Lines of what is there",
      "Weight of a pole's ring. Other parties' wires, crossings, ground and houses go along.",
    ],
    dimensionLineMm: ["Lines of dimensions", "Weight of dimension lines; leaders go along."],
    markLineMm: ["Lines of marks", "Weight of findings and of clouds round what was revised."],
    frameLineMm: ["Lines of frame and tables", "The border's weight; title block and tables go along."],
    layerNames: [
      "Layer names",
      "What layers are called in PDF, SVG and DXF, by the company's own rules. Capitals, digits, - _ and $, as DXF takes them; left empty, the program's own name. Labels of the route in plan stand on a layer of the same name and -TEXT.",
    ],
  };

export const drawingWords = {
  chooseLogo: "Choose a picture",
  otherLogo: "Choose another picture",
  noLogo: "Do without",
  logoFile: "Picture file of the logo",
  logoShown: "The company's logo",
  noneYet: "None: the company's name alone.",
  layers: "Names of layers",
  notHere: (why: string): string => `This name is not possible here: ${why}.`,
} as const;

/** What is drawn on each layer. */
export const layerWords: Readonly<Record<DrawnLayer, string>> = {
  watermark: "Watermark",
  ground: "Ground",
  crossings: "Crossings",
  others: "Other parties' wires",
  drops: "Drops",
  units: "Living units",
  cable: "Cables",
  strand: "Strand",
  slack: "Coils",
  terminals: "Terminals",
  poles: "Poles",
  dimensions: "Dimensions",
  findings: "Findings",
  revisions: "Revision clouds",
  frame: "Frame and title block",
  tables: "Tables",
  text: "Text",
  structures: "Structures (in plan)",
  spans: "Spans (in plan)",
  guys: "Guys (in plan)",
  closures: "Closures (in plan)",
};
