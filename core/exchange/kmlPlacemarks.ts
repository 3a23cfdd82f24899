import { ok, type Result } from "../model/result.ts";
import type { GeometryPoint } from "./geometryPoint.ts";
import { kmlShapes } from "./kmlShapes.ts";
import { plainOfHtml } from "./plainOfHtml.ts";
import { tableLimits } from "./table.ts";
import { walkXml, type XmlListener } from "./walkXml.ts";

/** A placemark as the file tells it. */
export type KmlPlacemark = {
  /** Counted in the file from 1. */
  readonly line: number;
  readonly values: ReadonlyMap<string, string>;
  /** Null where nothing says where it is. */
  readonly place: GeometryPoint | null;
  /** It is a line, an area or a group. */
  readonly isLarge: boolean;
  /** It has a track or a model, which has no one place. */
  readonly hasOther: boolean;
};

/** The placemarks of a file, as many as a table may have; how many it has, and its links to other files. */
type KmlPlacemarks = {
  readonly placemarks: readonly KmlPlacemark[];
  readonly count: number;
  readonly linkCount: number;
};

type Open = {
  readonly own: Map<string, string>;
  readonly extended: Map<string, string>;
  readonly shapes: ReturnType<typeof kmlShapes>;
  hasOther: boolean;
};

/** What a placemark says of itself that a list may want. */
const ownNames = new Set(["name", "description", "address"]);

/** Takes the placemarks out of KML, each with the names of its folders. Refuses as walkXml does. */
export function kmlPlacemarks(name: string, text: string): Result<KmlPlacemarks> {
  const placemarks: KmlPlacemark[] = [];
  let count = 0;
  let linkCount = 0;
  const folders: string[] = [];
  let open: Open | null = null;
  let dataName = "";

  const begin = (id: string): Open => {
    const own = new Map(id === "" ? [] : [["id", id]]);
    const folder = folders.filter((one) => one !== "").join(" / ");
    if (folder !== "") own.set("folder", folder);
    return { own, extended: new Map(), shapes: kmlShapes(), hasOther: false };
  };
  const end = ({ own, extended, shapes, hasOther }: Open): void => {
    count += 1;
    if (count > tableLimits.rowCount) return;
    const names = ["name", "description", "address", "folder", "id"].filter(
      (one) => own.has(one) && !extended.has(one),
    );
    const values = new Map([...names.map((one) => [one, own.get(one) ?? ""] as const), ...extended]);
    placemarks.push({ line: count, values, place: shapes.place(), isLarge: shapes.isLarge(), hasOther });
  };
  const listener: XmlListener = {
    open(element, attributeOf) {
      if (element === "Folder") folders.push("");
      else if (element === "Placemark") open = begin(attributeOf("id"));
      else if (element === "NetworkLink") linkCount += 1;
      else if (element === "Data" || element === "SimpleData") dataName = attributeOf("name");
      else if (open && (element === "Track" || element === "MultiTrack" || element === "Model")) open.hasOther = true;
    },
    close(element, told, parents) {
      const parent = parents.at(-1) ?? "";
      if (element === "Folder") folders.pop();
      else if (element === "name" && parent === "Folder") folders.splice(-1, 1, told);
      else if (open === null) return;
      else if (element === "Placemark") {
        end(open);
        open = null;
      } else if (element === "coordinates") open.shapes.addCoordinates(told, parents);
      else if (element === "Polygon") open.shapes.endPolygon();
      else if (parent === "Placemark" && ownNames.has(element))
        tell(open.own, element, element === "description" ? plainOfHtml(told) : told);
      else if (element === "SimpleData" || (element === "value" && parent === "Data"))
        tell(open.extended, dataName, told);
      else if (parent === "ExtendedData" && element !== "Data" && element !== "SchemaData")
        tell(open.extended, element, told);
    },
  };
  const walked = walkXml(name, text, listener);
  return walked.ok ? ok({ placemarks, count, linkCount }) : walked;
}

/** The first value of a name counts. */
function tell(values: Map<string, string>, name: string, value: string): void {
  if (name !== "" && value !== "" && !values.has(name)) values.set(name, value);
}
