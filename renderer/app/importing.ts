import type { ImportReply, ImportRequest } from "../../core/contract/shapes.ts";
import type { Result } from "../../core/model/result.ts";
import { openRouteOf, type Session, tell } from "./session.ts";
import { words } from "./words.ts";

export type ImportKind = ImportRequest["choices"]["kind"];

/** How a person wants a file read; what is not said is guessed by the host. */
export type Importing = {
  readonly kind: ImportKind;
  readonly fileName: string;
  readonly contentBase64: string;
  /** Field to heading where the guess was overruled; "" leaves the field out. */
  readonly columns: Readonly<Record<string, string>>;
  /** Whether columns were matched by hand, now or when such a list was last taken in. */
  readonly areColumnsChosen: boolean;
  readonly lengthUnit: "" | "ft" | "m";
  readonly takesGood: boolean;
  readonly replaces: boolean;
};

/** An import nobody has chosen a file for. */
export const blankImport: Importing = {
  kind: "pole",
  fileName: "",
  contentBase64: "",
  columns: {},
  areColumnsChosen: false,
  lengthUnit: "",
  takesGood: false,
  replaces: false,
};

/** Asks what the file would do to the route, without doing it. */
export function planImport(session: Session, importing: Importing): Promise<Result<ImportReply>> {
  return session.host.call("import.plan", requestOf(session, importing));
}

/** Takes the file in; the edit itself comes as an event. */
export async function takeImport(session: Session, importing: Importing): Promise<Result<ImportReply>> {
  const taken = await session.host.call("import.take", requestOf(session, importing));
  if (taken.ok && !taken.value.problem) {
    const { newCount, changedCount, skippedCount } = taken.value;
    tell(session, words.takenIn(newCount, changedCount, skippedCount));
  }
  return taken;
}

/** How a list with these headings was matched when it was last taken in; empty where none was. */
export async function keptColumns(
  session: Session,
  kind: ImportKind,
  headings: readonly string[],
): Promise<Readonly<Record<string, string>>> {
  const kept = await session.host.call("files.columns", { kind, headings });
  return kept.ok ? kept.value.columns : {};
}

/** Remembers how a list was matched, for the next one with the same headings. */
export async function keepColumns(session: Session, kind: ImportKind, taken: ImportReply): Promise<void> {
  const fields = taken.fields.map(({ field }) => [field, taken.columns[field] ?? ""] as const);
  await session.host.call("files.keepColumns", {
    kind,
    headings: taken.headings,
    columns: Object.fromEntries(fields),
  });
}

/** A file's bytes as text that crosses to the host. */
export async function base64Of(file: Blob): Promise<string> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const pieces: string[] = [];
  const pieceBytes = 0x8000;
  for (let i = 0; i < bytes.length; i += pieceBytes) {
    pieces.push(String.fromCharCode(...bytes.subarray(i, i + pieceBytes)));
  }
  return btoa(pieces.join(""));
}

function requestOf(session: Session, importing: Importing): ImportRequest {
  const { kind, fileName, contentBase64, columns, lengthUnit, takesGood, replaces } = importing;
  return {
    routeId: openRouteOf(session).routeId,
    fileName,
    contentBase64,
    choices: {
      kind,
      columns: { ...columns },
      ...(lengthUnit === "" ? {} : { options: { lengthUnit } }),
      onBad: takesGood ? "takeGood" : "refuse",
      onExisting: replaces ? "replace" : "skip",
    },
  };
}
