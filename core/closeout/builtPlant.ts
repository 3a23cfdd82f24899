import type { Attachment, Row, TableName } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";
import {
  builtAttachment,
  builtCoil,
  builtDrop,
  builtTerminal,
  builtUndrawnStrand,
  poleOfUndrawn,
} from "./builtFigures.ts";

/**
 * The route as built: the same plant with heights, offsets, coils and ports as they were read in place of the drawn ones. What is asked of it is
 * tracked as all else, so that an edit stales of it what leaned on the edited rows. It shows the same route; `asBuiltRows` tells the rows
 * that set the two apart.
 */
export function builtPlant(design: Plant): Plant {
  const row = <T extends TableName>(table: T, id: string): Row<T> | undefined => builtRow(design, table, id);
  const withUndrawn = (ids: readonly string[], poleId: string): readonly string[] => {
    const strand = builtUndrawnStrand(design, poleId);
    return strand ? [...ids, strand.id].sort() : ids;
  };
  return {
    ...design,
    row,
    rowOf(table, id) {
      const found = row(table, id);
      if (!found) throw new Error(`a reference leads nowhere: ${table} ${id}`);
      return found;
    },
    where(table, column, value) {
      const ids = design.where(table, column, value);
      return table === "attachment" && column === "poleId" ? withUndrawn(ids, value) : ids;
    },
    whereAll(table, wanted) {
      const ids = design.whereAll(table, wanted);
      const { poleId, kind }: { readonly poleId?: string; readonly kind?: string } = wanted;
      return table === "attachment" && poleId !== undefined && kind === "ourStrand" ? withUndrawn(ids, poleId) : ids;
    },
    derive: (name, key, compute, steady) => design.derive(`as built ${name}`, key, compute, steady),
  };
}

/** A row as built; undefined where there is none. */
export function builtRow<T extends TableName>(design: Plant, table: T, id: string): Row<T> | undefined {
  const row: unknown = builtOf(design, table, id);
  return row as Row<T> | undefined; // of the table it was asked from
}

function builtOf(design: Plant, table: TableName, id: string): unknown {
  switch (table) {
    case "attachment": {
      const drawn = design.row(table, id);
      return drawn ? builtAttachment(design, drawn) : undrawnStrand(design, id);
    }
    case "terminal": {
      const drawn = design.row(table, id);
      return drawn && builtTerminal(design, drawn);
    }
    case "slack": {
      const drawn = design.row(table, id);
      return drawn && builtCoil(design, drawn);
    }
    case "drop": {
      const drawn = design.row(table, id);
      return drawn && builtDrop(design, drawn);
    }
    default:
      return design.row(table, id);
  }
}

function undrawnStrand(design: Plant, id: string): Attachment | undefined {
  const poleId = poleOfUndrawn(id);
  return (poleId !== null && builtUndrawnStrand(design, poleId)) || undefined;
}
