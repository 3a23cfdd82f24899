import { z } from "zod";
import { dropSurfaces } from "./clearanceRows.ts";
import { amount, count, figure, id, label, ordinal, positionFields, positive, reference, words } from "./fields.ts";

/** A terminal hanging under the strand. */
const terminal = z.strictObject({
  id,
  name: label,
  terminalModelId: reference,
  cableId: reference,
  spanId: reference,
  /** Hanging point from the centre line of the span's first pole, m. */
  offsetM: positive,
  /** True where a person decided and no layout may move it. */
  pinned: z.boolean(),
  /** Why it hangs here and not at the first choice; empty where it is the first choice. */
  reason: words,
  /** Ports held for whoever comes later: the highest that have no drop. Nothing but a person's hand gives them away. */
  reservedPortCount: count,
  /** Whom they are held for, such as a vacant lot. */
  reservedFor: words,
});

/** A splitter inside a terminal; leg n lights port firstPort + n - 1. */
const splitter = z.strictObject({
  id,
  terminalId: reference,
  splitterTypeId: reference,
  /** Place inside the terminal, from 1. */
  position: ordinal,
  firstPort: ordinal,
});

/** A hub output that lights fibers of the route. */
const feed = z.strictObject({
  id,
  name: label,
  opticalClassId: reference,
  /** Legs of the splitter at the hub ahead of the route; 1 where there is none. */
  hubSplitCount: ordinal,
  /** Loss from the hub's port to the start of the cable at the longer of the two wavelengths' budgets. */
  upstreamLossDb: amount,
  /** Length of fiber from the hub to the start of the route's cable. */
  upstreamM: amount,
});

/** What one fiber of one cable is used for. */
const fiberUse = z.strictObject({
  id,
  cableId: reference,
  fiber: ordinal,
  /** terminal: cut and spliced to a splitter; lateral: spliced through to another cable; reserved: held; dead: cut or broken. */
  purpose: z.enum(["terminal", "lateral", "reserved", "dead"]),
  terminalId: reference.nullable(),
  splitterId: reference.nullable(),
  /** Closure where the fiber leaves this cable or ends; set for lateral and dead. */
  closureId: reference.nullable(),
  lateralCableId: reference.nullable(),
  lateralFiber: ordinal.nullable(),
  /** Hub output that lights it; set on fibers of a cable that comes from the hub. */
  feedId: reference.nullable(),
});

/** One dwelling, shop or lot that needs one port. */
const livingUnit = z.strictObject({
  id,
  /** Street address as people write it, unit included. */
  address: label,
  ...positionFields,
  kind: z.enum(["home", "business", "lot"]),
  /** Units of one building share its name; empty for a house of its own. */
  building: words,
  /** Height of the drop's attachment on the building above ground, m. */
  attachHeightM: positive.nullable(),
  note: words,
  /** Elevation of the ground at the building on the route's datum, m; null where nobody measured it. */
  groundM: figure.nullable(),
});

/** What the drop of a living unit passes over on its way, whichever terminal it comes from. */
const dropCrossing = z.strictObject({
  id,
  livingUnitId: reference,
  name: words,
  surface: z.enum(dropSurfaces),
  /** Middle of it from the living unit, along the drop, m. */
  fromUnitM: amount,
  widthM: positive,
  /** Elevation of the surface on the route's datum, m; null where nobody measured it. */
  surfaceM: figure.nullable(),
});

/** A drop from one port to one living unit. */
const drop = z.strictObject({
  id,
  terminalId: reference,
  port: ordinal,
  livingUnitId: reference,
  dropTypeId: reference,
  /** True where a person chose this port and no layout may change it. */
  pinned: z.boolean(),
});

export const serviceTables = { terminal, splitter, feed, fiberUse, livingUnit, dropCrossing, drop };
