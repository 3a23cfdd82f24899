import { type ClearanceCase, type ClearanceSurface, clearanceCases } from "../model/clearanceRows.ts";
import { type FurtherCase, furtherCases } from "../model/loadRows.ts";
import type { Attachment, Crossing, Structure } from "../model/tables.ts";
import { clearanceLimitFor } from "./clearance.ts";
import { groundAtM, groundLine } from "./groundLine.ts";
import { type Hung, hungInSpan } from "./hanging.ts";
import { type LineHeight, lineHeight } from "./lineHeight.ts";
import { defineQuery, type Plant } from "./plant.ts";
import { spanSeparations } from "./separation.ts";
import { stateIn } from "./strength.ts";
import { type Beside, structureBeside, structureSurfaces } from "./structureClearance.ts";

/** Cases a profile shows every line in: those of clearance, and the cold that draws it highest. */
export const profileCases = ["cold", ...clearanceCases] as const;

/** Those, and the further cases of strength, which a profile shows where the route is checked under them. */
export type ProfileCase = ClearanceCase | "cold" | FurtherCase;

/** Elevation of our line's underside at each offset in each case, m; blown out by wind, its height alone. */
export type ProfileLine = Readonly<Record<(typeof profileCases)[number], readonly number[]>> &
  Readonly<Partial<Record<FurtherCase, readonly number[]>>>;

/** The further cases a line is shown in, each with its elevations. */
export function furtherLines(line: ProfileLine): readonly (readonly [FurtherCase, readonly number[]])[] {
  return furtherCases.flatMap((one) => {
    const elevationsM = line[one];
    return elevationsM ? [[one, elevationsM] as const] : [];
  });
}

/** Pieces a curve is told in: a parabola of 1 % sag keeps within 0.01 % of its span of them. */
const pieceCount = 12;

/** A wire of another party, its heights at the offsets of its span. */
export type ProfileWire = {
  readonly fromAttachmentId: string;
  readonly toAttachmentId: string;
  readonly owner: string;
  readonly kind: Attachment["kind"];
  /** True where nobody measured its sag. */
  readonly isSagAssumed: boolean;
  /** Elevation at each offset, m. */
  readonly elevationsM: readonly number[];
};

/** Something the line passes over or beside. */
export type Below<T> = {
  readonly row: T;
  /** Elevation of its surface or top, m; null where nobody measured the ground. */
  readonly topM: number | null;
  /** The largest clearance any case asks for above it, m; null where the clearance set has none. */
  readonly limitM: number | null;
};

/** A building or sign under the line, or beside it. */
export type ProfileStructure = Below<Structure> & { readonly beside: Beside | null };

/** A span seen from the side. Offsets run from its first pole, m; elevations stand on the route's datum, m. */
export type ProfileSpan = {
  readonly spanId: string;
  readonly lengthM: number;
  readonly offsetsM: readonly number[];
  /** Null where nobody measured the ground at a pole. */
  readonly ground: readonly { readonly offsetM: number; readonly groundM: number }[] | null;
  /** Elevation of our line's underside at each offset in each case; null where nobody can tell. */
  readonly line: ProfileLine | null;
  /** Highest and lowest of the cases of clearance at each offset, m; null with the line. */
  readonly band: { readonly upperM: readonly number[]; readonly lowerM: readonly number[] } | null;
  /** Why there is no line or no ground; null where there is. */
  readonly why: string | null;
  readonly wires: readonly ProfileWire[];
  readonly crossings: readonly Below<Crossing>[];
  readonly structures: readonly ProfileStructure[];
  readonly hung: readonly Hung[];
};

/** A span from the side. */
export const profileSpan = defineQuery("profile-span", (plant, spanId): ProfileSpan => {
  const { lengthM } = plant.rowOf("span", spanId);
  const ground = groundLine(plant, spanId);
  const line = lineHeight(plant, spanId);
  const offsetsM = offsetsOf(lengthM, line.kind === "known" ? line.cornersM : []);
  const curves = line.kind === "known" ? curvesOf(plant, spanId, offsetsM, line) : null;
  return {
    spanId,
    lengthM,
    offsetsM,
    ground: ground.kind === "known" ? ground.points : null,
    line: curves,
    band: curves && bandOf(offsetsM, curves),
    why: line.kind === "unknown" ? line.why : null,
    wires: wiresOf(plant, spanId, offsetsM),
    crossings: crossingsOf(plant, spanId),
    structures: structuresOf(plant, spanId),
    hung: hungInSpan(plant, spanId),
  };
});

/** Offsets where heights are told: even pieces, and where the line may have a corner. */
function offsetsOf(lengthM: number, cornersM: readonly number[]): readonly number[] {
  const even = Array.from({ length: pieceCount + 1 }, (_, piece) => (lengthM * piece) / pieceCount);
  return [...new Set([...even, ...cornersM])].sort((a, b) => a - b);
}

/** Elevation of a structure's underside, of the ground it stands on where nothing passes under it, m; of one whose top is known. */
export function structureFootM({ row }: ProfileStructure, topM: number): number {
  return topM - row.heightM + (row.bottomM ?? 0);
}

/** Elevation that the distance beside a structure is told at, m: the strung line's, or the structure's top where the line is over it. */
export function besideElevationM(span: ProfileSpan, { row, topM }: ProfileStructure): number {
  const top = topM ?? 0;
  return span.line ? Math.min(top, elevationOn(span, span.line.stringing, row.offsetM)) : top;
}

/** Elevation at an offset on a curve told at the span's offsets, m. */
export function elevationOn({ offsetsM }: ProfileSpan, elevationsM: readonly number[], offsetM: number): number {
  const next = offsetsM.findIndex((one) => one >= offsetM);
  const to = next < 0 ? offsetsM.length - 1 : next;
  const from = Math.max(0, to - 1);
  const [a = 0, b = 0] = [elevationsM[from], elevationsM[to]];
  const runM = (offsetsM[to] ?? 0) - (offsetsM[from] ?? 0);
  return runM === 0 ? b : a + ((b - a) * (offsetM - (offsetsM[from] ?? 0))) / runM;
}

function curvesOf(
  plant: Plant,
  spanId: string,
  offsetsM: readonly number[],
  { undersideM, undersideInM }: Extract<LineHeight, { kind: "known" }>,
): ProfileLine {
  const curve = (condition: ClearanceCase | "cold") => offsetsM.map((offsetM) => undersideM(offsetM, condition));
  const further = furtherCases.flatMap((condition) => {
    const state = stateIn(plant, spanId, condition);
    return state ? [[condition, offsetsM.map((offsetM) => undersideInM(offsetM, state))] as const] : [];
  });
  return {
    cold: curve("cold"),
    stringing: curve("stringing"),
    hot: curve("hot"),
    iced: curve("iced"),
    ...Object.fromEntries(further),
  };
}

function bandOf(offsetsM: readonly number[], curves: ProfileLine) {
  const all = offsetsM.map((_, index) => profileCases.map((one) => curves[one][index] ?? 0));
  return { upperM: all.map((each) => Math.max(...each)), lowerM: all.map((each) => Math.min(...each)) };
}

function wiresOf(plant: Plant, spanId: string, offsetsM: readonly number[]): readonly ProfileWire[] {
  const separations = spanSeparations(plant, spanId);
  const { fromPoleId, toPoleId, lengthM } = plant.rowOf("span", spanId);
  const [fromGroundM, toGroundM] = [fromPoleId, toPoleId].map((id) => plant.rowOf("pole", id).groundM);
  if (separations.kind === "unknown" || fromGroundM == null || toGroundM == null) return [];
  return separations.wires.map(({ fromAttachmentId, toAttachmentId, otherSagM, isSagAssumed }) => {
    const [from, to] = [plant.rowOf("attachment", fromAttachmentId), plant.rowOf("attachment", toAttachmentId)];
    const [fromM, toM] = [fromGroundM + from.heightM, toGroundM + to.heightM];
    const elevationsM = offsetsM.map((offsetM) => {
      const part = offsetM / lengthM;
      return fromM + (toM - fromM) * part - 4 * otherSagM * part * (1 - part);
    });
    return { fromAttachmentId, toAttachmentId, owner: from.owner, kind: from.kind, isSagAssumed, elevationsM };
  });
}

function crossingsOf(plant: Plant, spanId: string): readonly Below<Crossing>[] {
  return plant
    .where("crossing", "spanId", spanId)
    .map((id) => plant.rowOf("crossing", id))
    .sort((a, b) => a.offsetM - b.offsetM)
    .map((row) => ({
      row,
      topM: row.surfaceM ?? groundUnder(plant, spanId, row.offsetM),
      limitM: largestLimitM(plant, row.surface),
    }));
}

function structuresOf(plant: Plant, spanId: string): readonly ProfileStructure[] {
  return plant
    .where("structure", "spanId", spanId)
    .map((id) => plant.rowOf("structure", id))
    .sort((a, b) => a.offsetM - b.offsetM)
    .map((row) => {
      const groundM = groundUnder(plant, spanId, row.offsetM);
      const beside = structureBeside(plant, row.id);
      return {
        row,
        topM: groundM === null ? null : groundM + row.heightM,
        limitM: beside ? null : largestLimitM(plant, structureSurfaces(row.kind).over),
        beside,
      };
    });
}

function groundUnder(plant: Plant, spanId: string, offsetM: number): number | null {
  const ground = groundLine(plant, spanId);
  return ground.kind === "known" ? groundAtM(ground, offsetM) : null;
}

function largestLimitM(plant: Plant, surface: ClearanceSurface): number | null {
  const limits = clearanceCases.flatMap((condition) => clearanceLimitFor(plant, surface, condition)?.limitM ?? []);
  return limits.length === 0 ? null : Math.max(...limits);
}
