import { fail, ok, type Result } from "../../../core/model/result.ts";
import { settingsOf } from "../../../core/model/route.ts";
import { tables } from "../../../core/model/tables.ts";
import { readChosen } from "../../host/importFile.ts";
import { withRouteFile } from "../../host/openRoute.ts";
import type { Session } from "../../host/session.ts";
import { readTemplateFile, takeLogo, takeTemplate, templateOf } from "../../host/templates.ts";
import { writeOut } from "../../host/writeOut.ts";
import { readArguments, type Verb } from "../verb.ts";

const shape = {
  name: "standards",
  usage:
    "FILE.strand [--take TEMPLATE.json | --set NAME=VALUE ... | --logo PICTURE | --no-logo] [--save TEMPLATE.json]",
};

type Asked = {
  readonly take?: string;
  readonly set?: string[];
  readonly logo?: string;
  readonly "no-logo"?: boolean;
};

/** Shows the company's standards of a route; changes them by a template, by name, or their logo; saves them as a template. */
export const standardsVerb: Verb = {
  ...shape,
  help: "Prints the company standards of a route. --take changes them by a template, --set by name, lengths in metres; --logo takes a PNG, JPEG or SVG for the title blocks. --save writes standards, catalogues and logo as a template.",
  async run(args, desk) {
    const text = { type: "string" } as const;
    const read = readArguments(shape, args, ["a FILE"], {
      take: text,
      set: { type: "string", multiple: true },
      logo: text,
      "no-logo": { type: "boolean" },
      save: text,
    });
    if (!read.ok) return read;
    const { save, ...asked } = read.value.values;
    if (Object.keys(asked).length > 1) {
      const mend = `Write: strandwright standards ${shape.usage}`;
      return fail("bad-arguments", "Standards are changed in one way at a time.", shape.name, mend);
    }
    return withRouteFile(read.value.positionals[0] ?? "", desk.stamp, async (session) => {
      const changed = await change(session, asked);
      if (!changed.ok) return changed;
      const saved = save === undefined ? ok(null) : writeOut(save, templateOf(session));
      if (!saved.ok) return saved;
      const standards = settingsOf(session.route());
      const done = [...changed.value, ...(saved.value ? [`Saved ${saved.value.path}`] : [])];
      const printed = Object.entries(standards).map(([name, value]) => `${name}=${value ?? ""}`);
      return ok({
        exitCode: 0,
        lines: done.length > 0 ? done : printed,
        json: { standards, saved: saved.value?.path ?? null },
      });
    });
  },
};

/** Makes the change asked for; answers with what was done. */
async function change(session: Session, asked: Asked): Promise<Result<readonly string[]>> {
  if (asked.take !== undefined) return byTemplate(session, asked.take);
  if (asked.logo !== undefined) {
    const picture = readChosen(asked.logo);
    if (!picture.ok) return picture;
    const { name, bytes } = picture.value;
    const taken = await takeLogo(session, name, bytes);
    return taken.ok ? ok([`Took ${name} as the logo`]) : taken;
  }
  if (asked["no-logo"]) return set(session, { logo: "" });
  if (asked.set === undefined) return ok([]);
  const odd = asked.set.find((one) => !/^\w+=/.test(one));
  if (odd !== undefined)
    return fail("bad-arguments", `"${odd}" is not a name and its value.`, "--set", "Write it like paper=A3.");
  return set(session, Object.fromEntries(asked.set.map(namedValue)));
}

async function byTemplate(session: Session, path: string): Promise<Result<readonly string[]>> {
  const file = readTemplateFile(path);
  if (!file.ok) return file;
  const taken = await takeTemplate(session, file.value);
  if (!taken.ok) return taken;
  const { newCount, changedCount } = taken.value;
  return ok([`Took ${file.value.fileName}: ${newCount} new, ${changedCount} changed`]);
}

function set(session: Session, values: object): Result<readonly string[]> {
  const done = session.run("settings.set", { values });
  return done.ok ? ok([`Set ${Object.keys(values).join(", ")}`]) : done;
}

/** A name and its value, read as what that standard takes: words, a figure, or nothing. */
function namedValue(text: string): readonly [string, string | number | null] {
  const at = text.indexOf("=");
  const [name, value] = [text.slice(0, at), text.slice(at + 1)];
  const column = new Map(Object.entries(tables.settings.shape)).get(name as keyof typeof tables.settings.shape); // undefined where it is none
  const readings = value === "" ? [null, ""] : [Number(value), value];
  const read = readings.find((one) => column?.safeParse(one).success);
  return [name, read ?? value];
}
