import type { WriteDb } from "../driver.ts";
import * as route from "./0001-route.ts";
import * as ground from "./0002-ground.ts";
import * as strandAtPoles from "./0003-strandAtPoles.ts";
import * as limitByVoltage from "./0004-limitByVoltage.ts";
import * as light from "./0005-light.ts";
import * as extremeLoads from "./0006-extremeLoads.ts";
import * as clearances from "./0007-clearances.ts";
import * as layout from "./0008-layout.ts";
import * as dropPassing from "./0009-dropPassing.ts";
import * as reservedPorts from "./0010-reservedPorts.ts";
import * as lightPowers from "./0011-lightPowers.ts";
import * as homeDriveway from "./0012-homeDriveway.ts";
import * as loadFactors from "./0013-loadFactors.ts";
import * as chainedTaps from "./0014-chainedTaps.ts";
import * as revisionStanding from "./0015-revisionStanding.ts";
import * as drawingOwn from "./0016-drawingOwn.ts";
import * as closeout from "./0017-closeout.ts";
import * as traceEvents from "./0018-traceEvents.ts";
import * as chainedJournal from "./0019-chainedJournal.ts";
import * as drawingStyle from "./0020-drawingStyle.ts";
import * as pieceAllowance from "./0021-pieceAllowance.ts";
import * as guyHardware from "./0022-guyHardware.ts";
import * as packetReadings from "./0023-packetReadings.ts";

/** One step of the route file from the version before it. */
export type Migration = { readonly version: number; readonly up: (db: WriteDb) => void };

/** Every step there ever was, oldest first; one that has landed is never edited. */
export const migrations: readonly Migration[] = [
  route,
  ground,
  strandAtPoles,
  limitByVoltage,
  light,
  extremeLoads,
  clearances,
  layout,
  dropPassing,
  reservedPorts,
  lightPowers,
  homeDriveway,
  loadFactors,
  chainedTaps,
  revisionStanding,
  drawingOwn,
  closeout,
  traceEvents,
  chainedJournal,
  drawingStyle,
  pieceAllowance,
  guyHardware,
  packetReadings,
];
