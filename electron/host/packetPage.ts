import { createHash } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { PacketSheet } from "../../core/closeout/packet/packetFile.ts";
import { markupText } from "../../core/units/markupText.ts";

/**
 * A packet as one file: the page's own script and style, and what it shows as data. It may run no other script and reach no
 * network; what is in the data stays text.
 *
 * @throws Error where the page was not built
 */
export function packetPage(sheet: PacketSheet): string {
  const script = builtPart("packet.js");
  const style = builtPart("packet.css");
  const hash = createHash("sha256").update(script).digest("base64");
  const policy = `default-src 'none'; script-src 'sha256-${hash}'; style-src 'unsafe-inline'; img-src data: blob:; base-uri 'none'; form-action 'none'`;
  // a less-than sign would let the data end its own element
  const data = JSON.stringify(sheet).replaceAll("<", "\\u003c");
  return [
    '<!doctype html>\n<html lang="en">\n<head>\n<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${policy}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${markupText(`Field packet ${sheet.number}, ${sheet.routeName}`)}</title>`,
    `<style>${style}</style>\n</head>\n<body>`,
    `<script type="application/json" id="packet">${data}</script>`,
    `<script>${script}</script>\n</body>\n</html>\n`,
  ].join("\n");
}

/** A part of the page, beside the bundled host; where the host runs from its sources, in the folder of the build. */
function builtPart(name: string): string {
  const places = [`./${name}`, `../../.build/app/${name}`].map((one) => fileURLToPath(new URL(one, import.meta.url)));
  const found = places.find((path) => existsSync(path));
  if (found === undefined) throw new Error(`the page of packets is not built: ${name} is missing`);
  return readFileSync(found, "utf8");
}
