import { ok } from "../../../core/model/result.ts";
import { withRouteFile } from "../../host/openRoute.ts";
import { countBySeverity, findingLine } from "../../host/summary.ts";
import { readArguments, type Verb } from "../verb.ts";

const shape = { name: "check", usage: "FILE.strand" };

/** Asks every rule about every row; exit code 1 where an error stands unwaived. */
export const checkVerb: Verb = {
  ...shape,
  help: "Checks the route against every rule; exit code 1 when there are errors that nobody waived.",
  async run(args, desk) {
    const read = readArguments(shape, args, ["a FILE"], {});
    if (!read.ok) return read;
    return withRouteFile(read.value.positionals[0] ?? "", desk.stamp, (session) => {
      const findings = session.findings();
      const counts = countBySeverity(findings);
      const { unitSystem } = session.plant.settings();
      return ok({
        exitCode: counts.error > 0 ? 1 : 0,
        lines: [
          ...findings.map((one) => findingLine(one, unitSystem)),
          `${counts.error} errors, ${counts.warning} warnings, ${counts.note} notes, ${counts.waived} waived`,
        ],
        json: { counts, findings },
      });
    });
  },
};
