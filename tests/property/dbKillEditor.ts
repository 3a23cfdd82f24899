import { writeSync } from "node:fs";
import { openRouteFile } from "../../db/openRouteFile.ts";
import { writeChange } from "../../db/writeChange.ts";
import { opening } from "../contract/db/scratch.ts";
import { raisePole } from "../contract/db/smallRoute.ts";

/** Edits a route file until it is killed: each edit raises a group of poles and is told on standard output once written. */
const [path = "", firstEdit = "0", polesPerEdit = "1"] = process.argv.slice(2);

const file = openRouteFile(path, opening);
if (!file.ok) throw new Error(file.fault.what);
for (let edit = Number(firstEdit); ; edit++) {
  const rows = Array.from({ length: Number(polesPerEdit) }, (_, index) =>
    raisePole(100 + edit * Number(polesPerEdit) + index),
  );
  const written = writeChange(file.value.db, { label: `Edit ${edit}`, ...opening, rows });
  if (!written.ok) throw new Error(written.fault.what);
  writeSync(1, `${edit}\n`);
}
