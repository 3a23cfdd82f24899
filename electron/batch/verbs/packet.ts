import { randomUUID } from "node:crypto";
import { dirname, join, resolve } from "node:path";
import { fail, ok, type Result } from "../../../core/model/result.ts";
import { withRouteFile } from "../../host/openRoute.ts";
import type { Session } from "../../host/session.ts";
import { type TakenPacket, takePacketFile } from "../../host/takePacket.ts";
import { writeOut } from "../../host/writeOut.ts";
import { writePacket } from "../../host/writePacket.ts";
import { type Desk, type Outcome, readArguments, type Verb } from "../verb.ts";

const shape = {
  name: "packet",
  usage:
    "FILE.strand (--crew NAME [--terminals NAME,...] [--wavelengths NM,...] [--out FILE.html] | --take FILE.json ...)",
};

/** Gives a crew a field packet, or takes in what crews bring back. */
export const packetVerb: Verb = {
  ...shape,
  help: "Gives a crew a field packet: one HTML file with the job cards of the terminals named, or of all, and a field for everything to be read; it works on a phone or a laptop without a network. --wavelengths asks for light at these too. With --take it takes in the files crews bring back, each as one edit; readings that disagree wait beside each other for a decision in the window.",
  async run(args, desk) {
    const text = { type: "string" } as const;
    const many = { type: "string", multiple: true } as const;
    const options = { crew: text, terminals: text, wavelengths: text, out: text, take: many };
    const read = readArguments(shape, args, ["a FILE"], options);
    if (!read.ok) return read;
    const { crew, terminals, wavelengths, out, take } = read.value.values;
    const isBoth = take !== undefined && [crew, terminals, wavelengths, out].some((one) => one !== undefined);
    if (isBoth || (take === undefined && crew === undefined)) {
      const mend = `Write: strandwright ${shape.name} ${shape.usage}`;
      return fail("bad-arguments", "A packet is either given to a crew or taken in.", shape.name, mend);
    }
    const waves = wavelengthsAsked(wavelengths);
    if (!waves.ok) return waves;
    const file = read.value.positionals[0] ?? "";
    return withRouteFile(file, desk.stamp, (session) =>
      take === undefined
        ? give(session, desk, { crew: crew ?? "", terminals, wavelengthsNm: waves.value, out })
        : takeAll(session, take),
    );
  },
};

type Given = {
  readonly crew: string;
  readonly terminals: string | undefined;
  readonly wavelengthsNm: readonly number[];
  readonly out: string | undefined;
};

async function give(
  session: Session,
  desk: Desk,
  { crew, terminals, wavelengthsNm, out }: Given,
): Promise<Result<Outcome>> {
  const terminalIds = terminalsAsked(session, terminals);
  if (!terminalIds.ok) return terminalIds;
  const packetId = `packet-${randomUUID()}`;
  const { author: by, nowIso } = desk.stamp;
  const asked = { terminalIds: terminalIds.value, wavelengthsNm };
  const given = session.run("packet.give", { packetId, crew, ...asked, by, atIso: nowIso() });
  if (!given.ok) return given;
  const page = await writePacket(session, desk.runJob, packetId);
  if (!page.ok) return page;
  const path = out === undefined ? join(dirname(session.path), page.value.fileName) : resolve(out);
  const written = writeOut(path, page.value.html);
  if (!written.ok) return written;
  const lines = [`${given.value.label}: ${path}`];
  return ok({ exitCode: 0, lines, json: { path, packetId, crew, terminalIds: terminalIds.value } });
}

function takeAll(session: Session, files: readonly string[]): Result<Outcome> {
  const lines: string[] = [];
  const json: unknown[] = [];
  for (const file of files) {
    const taken = takePacketFile(session, file);
    if (!taken.ok) return taken;
    lines.push(...takenLines(file, taken.value.told));
    json.push({ file, ...taken.value.told });
  }
  return ok({ exitCode: 0, lines, json });
}

function takenLines(file: string, told: TakenPacket["told"]): string[] {
  const { number, crew, takenCount, photoCount, alreadyCount, rivalCount, refused } = told;
  const counts = [
    `${takenCount} taken`,
    `${photoCount} photos`,
    `${alreadyCount} there already`,
    `${rivalCount} beside others, to be decided`,
    `${refused.length} refused`,
  ];
  return [
    `${file}, packet ${number} of ${crew}: ${counts.join(", ")}`,
    ...refused.map((one) => `  refused: ${one.what}. ${one.why}`),
  ];
}

/** Terminals by name or id, with commas between them; all where none is named. */
function terminalsAsked(session: Session, text: string | undefined): Result<readonly string[]> {
  const all = [...session.route().terminal.values()];
  if (text === undefined) return ok(all.map((one) => one.id));
  const asked = text.split(",").map((one) => one.trim());
  const found = asked.map((name) => all.find((one) => one.name === name || one.id === name));
  const odd = asked.find((_, index) => found[index] === undefined);
  if (odd !== undefined)
    return fail(
      "bad-arguments",
      `There is no terminal "${odd}".`,
      "--terminals",
      "Name terminals of the route, with commas between them.",
    );
  return ok(found.flatMap((one) => (one ? [one.id] : [])));
}

function wavelengthsAsked(text: string | undefined): Result<readonly number[]> {
  const asked = text === undefined ? [] : text.split(",").map(Number);
  if (asked.length <= 6 && asked.every((one) => Number.isInteger(one) && one >= 600 && one <= 1700)) return ok(asked);
  return fail(
    "bad-arguments",
    "Those are no wavelengths.",
    "--wavelengths",
    "Give up to six from 600 to 1700 nm: 1310,1550.",
  );
}
