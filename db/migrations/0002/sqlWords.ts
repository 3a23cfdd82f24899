/** Surfaces a line may pass over, as a list in SQL. */
export const lineSurfaces =
  "'road', 'highLoadRoad', 'driveway', 'roadside', 'rail', 'water', 'sailingWater', 'pedestrian', 'field'";

/** The four columns that say where a figure was read. */
export const basisColumns = `
  basis_document TEXT NOT NULL CHECK (length(basis_document) <= 2000),
  basis_clause TEXT NOT NULL CHECK (length(basis_clause) <= 2000),
  basis_edition TEXT NOT NULL CHECK (length(basis_edition) <= 2000),
  basis_mark TEXT NOT NULL CHECK (basis_mark IN ('seen', 'memory', 'practice', 'computed'))`;
