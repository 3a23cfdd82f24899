import type { EditReply } from "../../core/contract/contract.ts";
import { planTemplate, type TemplatePlan, writeTemplate } from "../../core/exchange/template.ts";
import { logoRefOf, logoText } from "../../core/model/logoRef.ts";
import { fail, ok, type Result, refused } from "../../core/model/result.ts";
import { type Route, settingsOf } from "../../core/model/route.ts";
import { keepFile, keptFile } from "../../db/keptFiles.ts";
import { onDisk } from "../../db/sqliteFault.ts";
import { readLogo } from "./companyLogo.ts";
import { readChosen } from "./importFile.ts";
import type { Session } from "./session.ts";

/** A template's text under its file's name. */
export type TemplateFile = { readonly fileName: string; readonly text: string };

/** What a template would change, and the bytes of the logo it brings. */
export type ReadTemplate = Pick<TemplatePlan, "rows" | "newCount" | "changedCount"> & {
  readonly logo: Uint8Array | null;
};

/** A template as it lies on the disk. Faults: those of the disk. */
export function readTemplateFile(path: string): Result<TemplateFile> {
  const read = readChosen(path);
  return read.ok ? ok({ fileName: read.value.name, text: Buffer.from(read.value.bytes).toString("utf8") }) : read;
}

/** The standards, catalogues and logo of an open route as the text of a template. */
export function templateOf({ file, route }: Session): string {
  const ref = logoRefOf(settingsOf(route()).logo);
  const bytes = ref && keptFile(file.db, ref.hash);
  return writeTemplate(route(), bytes && Buffer.from(bytes).toString("base64"));
}

/** Reads a template for a route. Faults: those of planTemplate and readLogo; bad-template where its logo is another one. */
export async function readTemplate(route: Route, { fileName, text }: TemplateFile): Promise<Result<ReadTemplate>> {
  const planned = planTemplate(route, text);
  if (!planned.ok) return planned;
  const { logo: named, logoBase64, ...plan } = planned.value;
  const ref = logoRefOf(named);
  if (!ref) return ok({ ...plan, logo: null });
  const logo = Buffer.from(logoBase64 ?? "", "base64");
  const read = await readLogo(fileName, logo);
  if (!read.ok) return read;
  if (read.value.hash === ref.hash) return ok({ ...plan, logo });
  return fail(
    "bad-template",
    "The logo of the template is not the one its standards name.",
    fileName,
    "Export the template again.",
  );
}

/** Takes a template into an open route, as one edit. */
export async function takeTemplate(session: Session, template: TemplateFile): Promise<Result<Taken>> {
  const read = await readTemplate(session.route(), template);
  if (!read.ok) return read;
  const { rows, newCount, changedCount, logo } = read.value;
  const done = kept(session, logo, () => session.take(`Take the standards of ${template.fileName}`, rows));
  return done.ok ? ok({ edit: done.value, newCount, changedCount }) : done;
}
type Taken = { readonly edit: EditReply; readonly newCount: number; readonly changedCount: number };

/** Takes a picture as the company's logo, as one edit. Faults: those of readLogo. */
export async function takeLogo(session: Session, fileName: string, bytes: Uint8Array): Promise<Result<EditReply>> {
  const read = await readLogo(fileName, bytes);
  if (!read.ok) return read;
  return kept(session, bytes, () => session.run("settings.set", { values: { logo: logoText(read.value) } }));
}

/** Keeps a logo beside the rows, then makes the edit that names it. */
function kept<T>(session: Session, logo: Uint8Array | null, edit: () => Result<T>): Result<T> {
  if (session.lookOnly) return refused(session.lookOnly);
  const done = onDisk(session.path, () => ok(logo && keepFile(session.file.db, logo)));
  return done.ok ? edit() : done;
}
