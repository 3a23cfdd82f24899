import type { Route } from "../../core/model/route.ts";
import type {
  Attachment,
  CableRun,
  Crossing,
  Drop,
  FiberUse,
  LivingUnit,
  Pole,
  Row,
  Slack,
  Span,
  Splitter,
  TableName,
  Terminal,
} from "../../core/model/tables.ts";
import { newRoute } from "../../electron/host/newRoute.ts";

const polesPerCable = 80;
const spanM = 45;
const unitsPerTerminal = 6;

type Growing = { [T in TableName]?: Map<string, Row<T>> };

/**
 * A long route for measuring: poles in gentle waves, joint with power and telephone, a fiber cable for every 80 poles, a
 * terminal of 8 ports at every second pole with 6 living units, a driveway under every fourth span.
 *
 * @param poleCount  poles; spans are one fewer, living units three a pole
 */
export function longRoute(assetsFolder: string, poleCount: number): Route {
  const base = newRoute(assetsFolder, { routeName: `Bench, ${poleCount} poles`, originLonDeg: -94, originLatDeg: 41 });
  const rows: Growing = {};
  const add = <T extends TableName>(table: T, row: Row<T>): void => {
    const growing = (rows[table] ?? new Map()) as Map<string, Row<T>>; // the key names the row's type
    growing.set(row.id, row);
    rows[table] = growing as never;
  };
  const cableCount = Math.ceil((poleCount - 1) / polesPerCable);
  for (let n = 0; n < cableCount; n += 1) addCable(add, n);
  for (let n = 0; n < poleCount; n += 1) addPole(add, n);
  for (let n = 0; n + 1 < poleCount; n += 1) addSpan(add, n);
  for (let n = 0; n + 1 < poleCount; n += 2) addTerminal(add, n);
  return { ...base, ...rows } as Route; // every table that grew replaces an empty one
}

/** The same poles and terminals on one cable and one strand section, dark: no cable has fibers for so many. */
export function onOneCable(route: Route): Route {
  const all = <Id extends "cableId" | "strandSectionId", One extends { readonly id: string }>(
    rows: ReadonlyMap<string, One>,
    column: Id,
    id: string,
  ) => new Map([...rows].map(([key, row]) => [key, { ...row, [column]: id }] as const));
  const runs = [...route.cableRun.values()].map((run, n) => ({ ...run, cableId: "cable-0", sequence: n + 1 }));
  return {
    ...route,
    cableRun: new Map(runs.map((run) => [run.id, run])),
    span: all(route.span, "strandSectionId", "strand-0"),
    terminal: all(route.terminal, "cableId", "cable-0"),
    slack: all(route.slack, "cableId", "cable-0"),
    fiberUse: new Map(),
  };
}

type Add = <T extends TableName>(table: T, row: Row<T>) => void;

function addCable(add: Add, n: number): void {
  add("strandSection", {
    id: `strand-${n}`,
    name: `Strand ${n + 1}`,
    strandTypeId: "strand-6-6m",
    stringingSagFrac: 0.01,
    stringingDegC: 15.6,
    atPoles: "clamped",
  });
  add("cable", {
    id: `cable-${n}`,
    name: `Cable ${n + 1}`,
    cableTypeId: "cable-72",
    fromClosureId: null,
    reelLengthM: 6000,
  });
  for (let feed = 0; feed < 10; feed += 1) {
    add("feed", {
      id: `feed-${n}-${feed}`,
      name: `Feed ${n + 1}-${feed + 1}`,
      opticalClassId: "gpon-b-plus",
      hubSplitCount: 4,
      upstreamLossDb: 8,
      upstreamM: 2000,
    });
  }
}

function addPole(add: Add, n: number): void {
  const pole: Pole = {
    id: `pole-${n}`,
    tag: `L-${n + 1}`,
    eastM: n * spanM * Math.cos(0.05),
    northM: n * spanM * Math.sin(0.05) + 4 * Math.sin(n / 9),
    groundM: 250 + 3 * Math.sin(n / 7),
    aboveGroundM: 10.2,
    poleClass: "4",
    owner: "Power",
    line: "Main",
    order: n + 1,
    terminalAllowed: true,
    note: "",
  };
  add("pole", pole);
  const wires: readonly (readonly [Attachment["kind"], string, number, number])[] = [
    ["primary", "Power", 9.8, 7200],
    ["neutral", "Power", 8.3, 0],
    ["communication", "Telephone", 5.6, 0],
    ["ourStrand", "Us", 6.2, 0],
  ];
  for (const [kind, owner, heightM, voltageV] of wires) {
    add("attachment", {
      id: `att-${n}-${kind}`,
      poleId: pole.id,
      owner,
      kind,
      heightM,
      voltageV,
      note: "",
      bonded: kind === "neutral",
    });
  }
}

function addSpan(add: Add, n: number): void {
  const cable = Math.floor(n / polesPerCable);
  const here = northOf(n + 1) - northOf(n);
  const span: Span = {
    id: `span-${n}`,
    fromPoleId: `pole-${n}`,
    toPoleId: `pole-${n + 1}`,
    lengthM: Math.hypot(spanM * Math.cos(0.05), spanM * Math.sin(0.05) + here),
    strandSectionId: `strand-${cable}`,
    origin: "surveyed",
    note: "",
  };
  add("span", span);
  const run: CableRun = {
    id: `run-${n}`,
    cableId: `cable-${cable}`,
    spanId: span.id,
    sequence: (n % polesPerCable) + 1,
    reversed: false,
  };
  add("cableRun", run);
  if (n % 4 !== 1) return;
  const crossing: Crossing = {
    id: `crossing-${n}`,
    spanId: span.id,
    name: "drive",
    surface: "driveway",
    offsetM: 20,
    widthM: 4,
    surfaceM: null,
  };
  add("crossing", crossing);
}

function northOf(n: number): number {
  return 4 * Math.sin(n / 9);
}

function addTerminal(add: Add, n: number): void {
  const cableId = `cable-${Math.floor(n / polesPerCable)}`;
  const place = (n % polesPerCable) / 2;
  const terminal: Terminal = {
    id: `terminal-${n}`,
    name: `T-${n / 2 + 1}`,
    terminalModelId: "terminal-8",
    cableId,
    spanId: `span-${n}`,
    offsetM: 0.9144,
    pinned: false,
    reason: "",
    reservedPortCount: 0,
    reservedFor: "",
  };
  const splitter: Splitter = {
    id: `splitter-${n}`,
    terminalId: terminal.id,
    splitterTypeId: "splitter-1x8",
    position: 1,
    firstPort: 1,
  };
  const coil: Slack = {
    id: `coil-${n}`,
    cableId,
    spanId: terminal.spanId,
    offsetM: 2.5,
    storedM: 6.096,
    kind: "access",
    terminalId: terminal.id,
  };
  const use: FiberUse = {
    id: `use-${n}`,
    cableId,
    fiber: Math.floor(place / 10) * 12 + (place % 10) + 1,
    purpose: "terminal",
    terminalId: terminal.id,
    splitterId: splitter.id,
    closureId: null,
    lateralCableId: null,
    lateralFiber: null,
    feedId: `feed-${Math.floor(n / polesPerCable)}-${Math.floor(place / 4)}`,
  };
  add("terminal", terminal);
  add("splitter", splitter);
  add("slack", coil);
  add("fiberUse", use);
  for (let unit = 0; unit < unitsPerTerminal; unit += 1) addUnit(add, n, unit);
}

function addUnit(add: Add, n: number, unit: number): void {
  const house: LivingUnit = {
    id: `unit-${n}-${unit}`,
    address: `${n * 10 + unit} Long Road`,
    eastM: (n * spanM + unit * 14 - 35) * Math.cos(0.05),
    northM: n * spanM * Math.sin(0.05) + northOf(n) + (unit % 2 === 0 ? 25 : -25),
    kind: "home",
    building: "",
    attachHeightM: 4,
    groundM: null,
    note: "",
  };
  const drop: Drop = {
    id: `drop-${n}-${unit}`,
    terminalId: `terminal-${n}`,
    port: unit + 1,
    livingUnitId: house.id,
    dropTypeId: "drop-flat",
    pinned: false,
  };
  add("livingUnit", house);
  add("drop", drop);
}
