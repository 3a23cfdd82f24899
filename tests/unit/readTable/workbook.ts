import { strToU8, zipSync } from "fflate";

/** A workbook of plain sheets for tests: text as inline strings, numbers as numbers; null leaves a cell out. */
export function workbook(
  sheets: Readonly<Record<string, readonly (readonly (string | number | null)[])[]>>,
): Uint8Array {
  const names = Object.keys(sheets);
  const part = (body: string): Uint8Array => strToU8(`<?xml version="1.0" encoding="UTF-8" standalone="yes"?>${body}`);
  const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  const rels = "http://schemas.openxmlformats.org/package/2006/relationships";
  const types = "http://schemas.openxmlformats.org/package/2006/content-types";
  const book = "application/vnd.openxmlformats-officedocument.spreadsheetml";
  const files: Record<string, Uint8Array> = {
    "[Content_Types].xml": part(
      `<Types xmlns="${types}"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${book}.sheet.main+xml"/>${names.map((_, n) => `<Override PartName="/xl/worksheets/sheet${n + 1}.xml" ContentType="${book}.worksheet+xml"/>`).join("")}</Types>`,
    ),
    "_rels/.rels": part(
      `<Relationships xmlns="${rels}"><Relationship Id="rId1" Type="${office}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    ),
    "xl/workbook.xml": part(
      `<workbook xmlns="${main}" xmlns:r="${office}"><sheets>${names.map((name, n) => `<sheet name="${name}" sheetId="${n + 1}" r:id="rId${n + 1}"/>`).join("")}</sheets></workbook>`,
    ),
    "xl/_rels/workbook.xml.rels": part(
      `<Relationships xmlns="${rels}">${names.map((_, n) => `<Relationship Id="rId${n + 1}" Type="${office}/worksheet" Target="worksheets/sheet${n + 1}.xml"/>`).join("")}</Relationships>`,
    ),
  };
  for (const [n, name] of names.entries()) {
    const rows = (sheets[name] ?? []).map(
      (cells, row) => `<row r="${row + 1}">${cells.map((value, column) => cell(value, row, column)).join("")}</row>`,
    );
    files[`xl/worksheets/sheet${n + 1}.xml`] = part(
      `<worksheet xmlns="${main}"><sheetData>${rows.join("")}</sheetData></worksheet>`,
    );
  }
  return zipSync(files);
}

function cell(value: string | number | null, row: number, column: number): string {
  const at = `${String.fromCharCode(65 + column)}${row + 1}`;
  if (value === null) return "";
  return typeof value === "number"
    ? `<c r="${at}"><v>${value}</v></c>`
    : `<c r="${at}" t="inlineStr"><is><t xml:space="preserve">${value}</t></is></c>`;
}
