/** A block of cells as text, row by row. */
export type Block = readonly (readonly string[])[];

/** A block as a spreadsheet takes it: tabs between cells, line ends between rows, nothing that would turn into a formula. */
export function tsvOf(block: Block): string {
  return block.map((row) => row.map((text) => quoted(neutral(text))).join("\t")).join("\r\n");
}

/** A block as an HTML table. */
export function htmlOf(block: Block): string {
  const cell = (text: string): string =>
    `<td>${neutral(text).replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;")}</td>`;
  return `<table>${block.map((row) => `<tr>${row.map(cell).join("")}</tr>`).join("")}</table>`;
}

/** Reads a block off the clipboard: tabs and line ends, with quotes round cells that hold either. */
export function blockOf(text: string): Block {
  const rows: string[][] = [];
  let row: string[] = [];
  const cell = /("(?:[^"]|"")*"|[^\t\r\n]*)(\t|\r\n|\n|\r|$)/y;
  while (cell.lastIndex < text.length || row.length > 0) {
    const match = cell.exec(text);
    if (!match) break;
    row.push(plain(match[1] ?? ""));
    if (match[2] === "\t") continue;
    rows.push(row);
    row = [];
    if (match[2] === "") break;
  }
  return rows;
}

/** Text that a spreadsheet would take for a formula gets a mark before it; figures stay figures. */
function neutral(text: string): string {
  if (/^[-+]?[\d.,]+$/.test(text)) return text;
  return /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
}

function quoted(text: string): string {
  return /[\t\r\n"]/.test(text) ? `"${text.replace(/"/g, '""')}"` : text;
}

function plain(cell: string): string {
  const text =
    cell.startsWith('"') && cell.endsWith('"') && cell.length > 1 ? cell.slice(1, -1).replace(/""/g, '"') : cell;
  return /^'[=+\-@\t\r]/.test(text) ? text.slice(1) : text;
}
