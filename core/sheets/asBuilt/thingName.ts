import type { Subject } from "../../closeout/subject.ts";
import { spanName } from "../../plant/names.ts";
import type { Plant } from "../../plant/plant.ts";

/** What people call a thing of the closeout on a sheet: T-04 port 3, drop of 12 Mill Rd, M-07 to M-08; its id where it is gone. */
export function thingName(plant: Plant, { kind, subjectId, port, alongId }: Subject): string {
  switch (kind) {
    case "pole": {
      const cable = alongId === "" ? undefined : plant.row("cable", alongId);
      return `pole ${plant.row("pole", subjectId)?.tag ?? subjectId}${cable ? `, cable ${cable.name}` : ""}`;
    }
    case "bond": {
      const section = plant.row("strandSection", alongId);
      return `bond at ${plant.row("pole", subjectId)?.tag ?? subjectId}${section ? ` of ${section.name}` : ""}`;
    }
    case "span":
      return plant.row("span", subjectId) ? `span ${spanName(plant, subjectId)}` : `span ${subjectId}`;
    case "port":
      return `${plant.row("terminal", subjectId)?.name ?? subjectId} port ${port}`;
    case "drop": {
      const drop = plant.row("drop", subjectId);
      return `drop of ${drop ? plant.rowOf("livingUnit", drop.livingUnitId).address : subjectId}`;
    }
    case "strandSection":
      return `strand ${plant.row("strandSection", subjectId)?.name ?? subjectId}`;
    case "cable":
    case "closure":
    case "terminal":
      return `${kind} ${plant.row(kind, subjectId)?.name ?? subjectId}`;
  }
}
