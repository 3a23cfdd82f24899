import { applyChange } from "../../../core/edits/change.ts";
import type { ImportChoices } from "../../../core/exchange/importOptions.ts";
import { importChoices } from "../../../core/exchange/importOptions.ts";
import { fail, ok, type Result } from "../../../core/model/result.ts";
import type { Route } from "../../../core/model/route.ts";
import { importLabel, planFile, readChosen } from "../../host/importFile.ts";
import { withRouteFile } from "../../host/openRoute.ts";
import { type TextEncoding, textEncodings } from "../../host/readTable/decodeText.ts";
import { outcomeOf, type PlannedList, refusalOf } from "../importOutcome.ts";
import { readArguments, type Verb } from "../verb.ts";

const shape = {
  name: "import",
  usage:
    "FILE.strand [--poles F] [--spans F] [--units F] [--attachments F] [--crossings F] [--ground F] [--structures F] [--guys F] [--sags F] [--drop-crossings F] [--map KIND.FIELD=HEADING]... " +
    "[--length-unit ft|m|usft] [--height-is poleLength|aboveGround] [--number-untagged PREFIX] [--span-way auto|order|infer|none] " +
    "[--take-good] [--replace] [--encoding NAME] [--dry-run]",
};

/** Option of each list and the kind of import it is, in the order they must be taken. */
const lists = [
  ["poles", "pole"],
  ["spans", "spanPair"],
  ["units", "livingUnit"],
  ["attachments", "attachment"],
  ["crossings", "crossing"],
  ["ground", "groundPoint"],
  ["structures", "structure"],
  ["guys", "guy"],
  ["sags", "wireSag"],
  ["drop-crossings", "dropCrossing"],
] as const satisfies readonly (readonly [string, ImportChoices["kind"]])[];

/** Brings lists of poles, spans, living units, attachments, and of what stands under and beside the line in, all that are named or none. */
export const importVerb: Verb = {
  ...shape,
  help: "Brings lists in from CSV, XLSX, GeoJSON, KML, KMZ or the waypoints of GPX. Each list is one edit; all named are taken or none, and with --take-good without their bad rows.",
  async run(args, desk) {
    const text = { type: "string" } as const;
    const read = readArguments(shape, args, ["a FILE"], {
      poles: text,
      spans: text,
      units: text,
      attachments: text,
      crossings: text,
      ground: text,
      structures: text,
      guys: text,
      sags: text,
      "drop-crossings": text,
      map: { type: "string", multiple: true },
      "length-unit": text,
      "height-is": text,
      "number-untagged": text,
      "span-way": text,
      encoding: text,
      "take-good": { type: "boolean" },
      replace: { type: "boolean" },
      "dry-run": { type: "boolean" },
    });
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    const encoding = encodingOf(values.encoding);
    if (!encoding.ok) return encoding;
    return withRouteFile(positionals[0] ?? "", desk.stamp, async (session) => {
      const planned = await planLists(session.route(), values, encoding.value);
      if (!planned.ok) return planned;
      const stopped = planned.value.find((one) => one.problem !== null);
      if (stopped) return ok(refusalOf(stopped));
      if (planned.value.length === 0)
        return fail("bad-arguments", "No list was named.", shape.name, `Write: strandwright import ${shape.usage}`);
      const isDry = values["dry-run"] === true;
      for (const { file, kind, plan } of isDry ? [] : planned.value) {
        const taken = session.take(importLabel(kind, file), plan?.rows ?? []);
        if (!taken.ok) return taken;
      }
      return ok(outcomeOf(planned.value, isDry));
    });
  },
};

type Values = { readonly [name: string]: string | boolean | readonly (string | boolean)[] | undefined };

function choicesOf(kind: ImportChoices["kind"], values: Values): Result<ImportChoices> {
  const maps = Array.isArray(values.map) ? values.map.map(String) : [];
  const columns: Record<string, string> = {};
  for (const map of maps) {
    const named = /^(\w+)\.(\w+)=(.*)$/.exec(map);
    if (!named || !lists.some(([, known]) => known === named[1]))
      return fail(
        "bad-map",
        "A column map cannot be read.",
        map,
        `Write --map KIND.FIELD=HEADING, such as --map pole.tag=Asset. Kinds: ${lists.map(([, known]) => known).join(", ")}.`,
      );
    if (named[1] === kind) columns[named[2] ?? ""] = named[3] ?? "";
  }
  const checked = importChoices.safeParse({
    kind,
    columns,
    options: {
      lengthUnit: values["length-unit"],
      heightIs: values["height-is"],
      numberUntagged: values["number-untagged"],
    },
    onBad: values["take-good"] === true ? "takeGood" : "refuse",
    onExisting: values.replace === true ? "replace" : "skip",
    spans: values["span-way"],
  });
  if (checked.success) return ok(withoutUnset(checked.data));
  const issue = checked.error.issues[0];
  return fail(
    "bad-arguments",
    `An option cannot be read: ${issue?.message ?? "unknown value"}.`,
    issue?.path.join(".") ?? shape.name,
    `Write: strandwright import ${shape.usage}`,
  );
}

/** zod keeps keys whose value is undefined; the importers ask for keys that are there or not. */
function withoutUnset(choices: ImportChoices): ImportChoices {
  return JSON.parse(JSON.stringify(choices));
}

function encodingOf(name: string | undefined): Result<TextEncoding | null> {
  if (name === undefined) return ok(null);
  const known = textEncodings.find((one) => one === name.toLowerCase());
  return known
    ? ok(known)
    : fail(
        "bad-encoding",
        `The encoding "${name}" is not known.`,
        "--encoding",
        `Use one of ${textEncodings.join(", ")}.`,
      );
}

/** Works each list out on the route as the lists before it would leave it; stops at the first that cannot be taken. */
async function planLists(
  route: Route,
  values: Values,
  encoding: TextEncoding | null,
): Promise<Result<readonly PlannedList[]>> {
  const planned: PlannedList[] = [];
  let present = route;
  for (const [option, kind] of lists) {
    const path = values[option];
    if (typeof path !== "string") continue;
    const choices = choicesOf(kind, values);
    if (!choices.ok) return choices;
    const file = readChosen(path);
    if (!file.ok) return file;
    const one = await planFile(present, file.value, choices.value, encoding === null ? {} : { encoding });
    if (!one.ok) return one;
    planned.push({ ...one.value, file: file.value.name, kind });
    if (one.value.problem !== null) break;
    const next = applyChange(present, one.value.plan);
    if (!next.ok) return next;
    present = next.value;
  }
  return ok(planned);
}
