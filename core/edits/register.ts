import type { AnyCommand } from "./command.ts";
import { sealed } from "./command.ts";
import { attachmentAdd } from "./commands/attachmentAdd.ts";
import { attachmentSet } from "./commands/attachmentSet.ts";
import { cableLash } from "./commands/cableLash.ts";
import { cableResize } from "./commands/cableResize.ts";
import { cableReverse } from "./commands/cableReverse.ts";
import { catalogueAdd } from "./commands/catalogueAdd.ts";
import { catalogueCopy } from "./commands/catalogueCopy.ts";
import { catalogueRemove } from "./commands/catalogueRemove.ts";
import { catalogueSet } from "./commands/catalogueSet.ts";
import { closureAdd } from "./commands/closureAdd.ts";
import { crossingAdd } from "./commands/crossingAdd.ts";
import { crossingSet } from "./commands/crossingSet.ts";
import { dropAdd } from "./commands/dropAdd.ts";
import { dropCrossingAdd } from "./commands/dropCrossingAdd.ts";
import { dropMove } from "./commands/dropMove.ts";
import { dropPin } from "./commands/dropPin.ts";
import { dropRemove } from "./commands/dropRemove.ts";
import { dropsEven } from "./commands/dropsEven.ts";
import { dropsMove } from "./commands/dropsMove.ts";
import { dropsPlug } from "./commands/dropsPlug.ts";
import { feedAdd } from "./commands/feedAdd.ts";
import { fiberFree } from "./commands/fiberFree.ts";
import { fiberGive } from "./commands/fiberGive.ts";
import { findingWaive } from "./commands/findingWaive.ts";
import { groundPointAdd } from "./commands/groundPointAdd.ts";
import { guyAdd } from "./commands/guyAdd.ts";
import { lateralString } from "./commands/lateralString.ts";
import { layoutRun } from "./commands/layoutRun.ts";
import { lineString } from "./commands/lineString.ts";
import { milestoneReach } from "./commands/milestoneReach.ts";
import { packetGive } from "./commands/packetGive.ts";
import { photoAdd } from "./commands/photoAdd.ts";
import { photoRemove } from "./commands/photoRemove.ts";
import { poleAdd } from "./commands/poleAdd.ts";
import { poleExtend } from "./commands/poleExtend.ts";
import { poleMove } from "./commands/poleMove.ts";
import { poleRename } from "./commands/poleRename.ts";
import { punchAdd } from "./commands/punchAdd.ts";
import { punchDone } from "./commands/punchDone.ts";
import { punchReopen } from "./commands/punchReopen.ts";
import { punchSet } from "./commands/punchSet.ts";
import { readingRemove } from "./commands/readingRemove.ts";
import { readingTake } from "./commands/readingTake.ts";
import { revisionApprove } from "./commands/revisionApprove.ts";
import { revisionIssue } from "./commands/revisionIssue.ts";
import { revisionVoid } from "./commands/revisionVoid.ts";
import { rivalDecide } from "./commands/rivalDecide.ts";
import { rowRemove } from "./commands/rowRemove.ts";
import { rowSet } from "./commands/rowSet.ts";
import { rowsRemove } from "./commands/rowsRemove.ts";
import { rowsSet } from "./commands/rowsSet.ts";
import { settingsSet } from "./commands/settingsSet.ts";
import { signOffReopen } from "./commands/signOffReopen.ts";
import { signOffSign } from "./commands/signOffSign.ts";
import { slackAdd } from "./commands/slackAdd.ts";
import { slackMove } from "./commands/slackMove.ts";
import { slackRemove } from "./commands/slackRemove.ts";
import { slackSet } from "./commands/slackSet.ts";
import { spanAdd } from "./commands/spanAdd.ts";
import { spanConfirm } from "./commands/spanConfirm.ts";
import { spanJoin } from "./commands/spanJoin.ts";
import { spanMeasure } from "./commands/spanMeasure.ts";
import { spanSplit } from "./commands/spanSplit.ts";
import { stepsRun } from "./commands/stepsRun.ts";
import { structureAdd } from "./commands/structureAdd.ts";
import { terminalHang } from "./commands/terminalHang.ts";
import { terminalMove } from "./commands/terminalMove.ts";
import { terminalPin } from "./commands/terminalPin.ts";
import { terminalRemove } from "./commands/terminalRemove.ts";
import { terminalRename } from "./commands/terminalRename.ts";
import { terminalReserve } from "./commands/terminalReserve.ts";
import { terminalResize } from "./commands/terminalResize.ts";
import { terminalTurn } from "./commands/terminalTurn.ts";
import { traceGive } from "./commands/traceGive.ts";
import { traceKeep } from "./commands/traceKeep.ts";
import { traceRemove } from "./commands/traceRemove.ts";
import { unitAdd } from "./commands/unitAdd.ts";
import { waiverRemove } from "./commands/waiverRemove.ts";
import { wireSagAdd } from "./commands/wireSagAdd.ts";

/** Every edit a person can ask for by name. A test fails where a file of the commands folder is missing here. */
export const commandRegister: readonly AnyCommand[] = [
  sealed(attachmentAdd),
  sealed(attachmentSet),
  sealed(cableLash),
  sealed(cableResize),
  sealed(cableReverse),
  sealed(catalogueAdd),
  sealed(catalogueCopy),
  sealed(catalogueRemove),
  sealed(catalogueSet),
  sealed(closureAdd),
  sealed(crossingAdd),
  sealed(crossingSet),
  sealed(dropAdd),
  sealed(dropMove),
  sealed(dropPin),
  sealed(dropRemove),
  sealed(dropsEven),
  sealed(dropsMove),
  sealed(dropsPlug),
  sealed(guyAdd),
  sealed(groundPointAdd),
  sealed(structureAdd),
  sealed(wireSagAdd),
  sealed(dropCrossingAdd),
  sealed(feedAdd),
  sealed(fiberFree),
  sealed(fiberGive),
  sealed(findingWaive),
  sealed(layoutRun),
  sealed(milestoneReach),
  sealed(photoAdd),
  sealed(photoRemove),
  sealed(punchAdd),
  sealed(punchDone),
  sealed(punchReopen),
  sealed(punchSet),
  sealed(readingRemove),
  sealed(readingTake),
  sealed(packetGive),
  sealed(rivalDecide),
  sealed(traceGive),
  sealed(traceKeep),
  sealed(traceRemove),
  sealed(lineString),
  sealed(lateralString),
  sealed(poleAdd),
  sealed(poleExtend),
  sealed(poleMove),
  sealed(poleRename),
  sealed(revisionApprove),
  sealed(revisionIssue),
  sealed(revisionVoid),
  sealed(rowRemove),
  sealed(rowsRemove),
  sealed(rowSet),
  sealed(rowsSet),
  sealed(settingsSet),
  sealed(signOffReopen),
  sealed(signOffSign),
  sealed(slackAdd),
  sealed(slackMove),
  sealed(slackRemove),
  sealed(slackSet),
  sealed(spanAdd),
  sealed(spanConfirm),
  sealed(spanJoin),
  sealed(spanSplit),
  sealed(spanMeasure),
  sealed(stepsRun(findCommand)),
  sealed(terminalHang),
  sealed(terminalMove),
  sealed(terminalPin),
  sealed(terminalRemove),
  sealed(terminalRename),
  sealed(terminalReserve),
  sealed(terminalResize),
  sealed(terminalTurn),
  sealed(unitAdd),
  sealed(waiverRemove),
];

const byId = new Map(commandRegister.map((one) => [one.id, one]));

/** A command by its id, or undefined where there is none. */
export function findCommand(id: string): AnyCommand | undefined {
  return byId.get(id);
}
