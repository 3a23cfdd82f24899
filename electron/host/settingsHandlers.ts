import { readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { z } from "zod";
import type { EditReply } from "../../core/contract/contract.ts";
import { layoutSchema, type PanelLayout } from "../../core/contract/settingsMethods.ts";
import { mark } from "../../core/model/fields.ts";
import { ok, type Result } from "../../core/model/result.ts";
import { tables } from "../../core/model/tables.ts";
import { keptLogo } from "./companyLogo.ts";
import { keptOrHeld } from "./keptJson.ts";
import { places } from "./places.ts";
import type { Handlers } from "./serve.ts";
import type { Session } from "./session.ts";
import { takeLogo, takeTemplate, templateOf } from "./templates.ts";

type Parts = {
  /** Where a person's own ways are kept; null keeps them for this run. */
  readonly configFolder: string | null;
  readonly withRoute: <T>(
    routeId: string,
    work: (session: Session) => Result<T> | Promise<Result<T>>,
  ) => Promise<Result<T>>;
  readonly told: (routeId: string, done: Result<EditReply>) => Result<EditReply>;
};

const basis = z.strictObject({ document: z.string(), clause: z.string(), edition: z.string(), mark });

/** Answers about standards, catalogues and templates. */
export function settingsHandlers({
  withRoute,
  told,
  configFolder,
}: Parts): Pick<
  Handlers,
  "panels.layout" | "catalogue.basis" | "template.export" | "template.import" | "logo.take" | "logo.read"
> {
  const kept = keptOrHeld<PanelLayout | null>(configFolder, "panels.json", layoutSchema.nullable(), null);
  return {
    "panels.layout": ({ keep }) => {
      if (keep) kept.write(keep);
      return ok({ layout: kept.read() });
    },
    "catalogue.basis": () => ok({ standards: shippedStandards(places(import.meta.url).assetsFolder) }),
    "template.export": ({ routeId }) =>
      withRoute(routeId, (session) =>
        ok({
          fileName: `${basename(session.fileName, ".strand")} standards.json`,
          text: templateOf(session),
        }),
      ),
    "template.import": ({ routeId, fileName, text }) =>
      withRoute(routeId, async (session) => {
        const taken = await takeTemplate(session, { fileName, text });
        if (!taken.ok) return taken;
        const done = told(routeId, ok(taken.value.edit));
        return done.ok ? taken : done;
      }),
    "logo.take": ({ routeId, fileName, contentBase64 }) =>
      withRoute(routeId, async (session) =>
        told(routeId, await takeLogo(session, fileName, Buffer.from(contentBase64, "base64"))),
      ),
    "logo.read": ({ routeId }) =>
      withRoute(routeId, ({ file, route }) => ok({ href: keptLogo(file.db, route())?.href ?? null })),
  };
}

/** The standards the program brings, each with its basis. */
function shippedStandards(assetsFolder: string) {
  const read = (name: string): unknown => JSON.parse(readFileSync(join(assetsFolder, "catalogue", name), "utf8"));
  const values = new Map<string, string | number | null>(Object.entries(tables.settings.parse(read("settings.json"))));
  const bases = z.record(z.string(), basis).parse(read("settings.basis.json"));
  return Object.fromEntries(
    Object.entries(bases).map(([column, one]) => [column, { ...one, value: values.get(column) ?? null }]),
  );
}
