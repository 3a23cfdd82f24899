import type { Plant } from "../../plant/plant.ts";
import { polesAlong, spanRuns } from "../../plant/spanRuns.ts";
import type { Finding } from "../../rules/finding.ts";
import { reportSchedules } from "../asBuilt/reportSheet.ts";
import { terminalOrder } from "../setDrafts.ts";
import { spliceSchedules } from "../splice/spliceSheet.ts";
import { billSchedule } from "./billSheet.ts";
import { bondingSchedule } from "./bondingSheet.ts";
import { closeoutSchedules } from "./closeoutSheet.ts";
import { costSchedule } from "./costSheet.ts";
import { numberOpen } from "./findingNumbers.ts";
import { findingSchedule } from "./findingsSheet.ts";
import { guySchedule } from "./guySheet.ts";
import { permitSchedule } from "./permitSheet.ts";
import { reelSchedule } from "./reelSheet.ts";
import type { Schedule } from "./schedule.ts";
import { portSchedule } from "./scheduleSheet.ts";
import { stringingSchedule } from "./stringingSheet.ts";

/**
 * The schedules of a route, as its sheets print them; those without a row are left out.
 *
 * @param findings  of the same route, waived ones included, worst first
 */
export function schedules(plant: Plant, findings: readonly Finding[]): readonly Schedule[] {
  const steps = spanRuns(plant).flatMap((run) => run.steps);
  const poleIds = polesAlong(steps);
  const terminalIds = terminalOrder(plant);
  const all = [
    portSchedule(plant, terminalIds),
    reelSchedule(plant),
    billSchedule(plant),
    costSchedule(plant),
    permitSchedule(plant, poleIds),
    stringingSchedule(plant, steps),
    guySchedule(plant, poleIds),
    bondingSchedule(plant, steps),
    ...spliceSchedules(plant),
    findingSchedule(plant, findings, numberOpen(plant, findings)),
    ...closeoutSchedules(plant, { steps, terminalIds }),
    ...reportSchedules(plant, findings),
  ];
  return all.filter(({ rows }) => rows.some((row) => !("group" in row)));
}
