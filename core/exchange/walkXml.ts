import { Parser } from "saxen";
import { fail, ok, type Result } from "../model/result.ts";
import { tableLimits } from "./table.ts";

/** Hears the elements of a document one after another. Names come without the prefix of their namespace. */
export type XmlListener = {
  /** @param parents  names of the elements around it, the root first */
  readonly open: (name: string, attributeOf: (name: string) => string, parents: readonly string[]) => void;
  /** @param text  what stands right inside it, without what its children hold and without blanks around it */
  readonly close: (name: string, text: string, parents: readonly string[]) => void;
};

/** KML and GPX go ten or so deep, and folders may lie in folders. */
const deepest = 100;
/** Most letters of a text with references to characters in it; each of them costs a hundred times its letters. */
const longestDecoded = 4_000_000;

type Place = () => { readonly line: number };

/**
 * Goes through an XML document and holds no more of it than the elements that are open. Nothing is fetched, and a document that
 * declares entities of its own is refused: a few lines of them can unfold to gigabytes.
 *
 * Refuses with "too-large", or with "not-xml" where the document is not well formed; `where` tells the line.
 *
 * @param file  name of the file, for messages
 * @source XML 1.0, fifth edition
 */
export function walkXml(file: string, document: string, listener: XmlListener): Result<null> {
  if (document.length > tableLimits.textLength)
    return fail("too-large", "The file is too large to read as text.", file, "Cut it to the area of this route.");
  let wrong: Result<null> = ok(null);
  const left = new Error("left");
  // thrown, since the parser would go on to warn of every letter of a tag
  const refuse = (why: string, line: number): never => {
    wrong = notXml(file, why, line);
    throw left;
  };
  const parser = new Parser();
  const parents: string[] = [];
  const texts: string[] = [];
  const hearText = (text: string): void => {
    if (texts.length > 0) texts.push(`${texts.pop()}${text}`);
  };
  const hearWrong = ({ message }: Error, place: Place): void =>
    refuse(message, isAtEnd(message, document) ? lineCount(document) : place().line + 1);
  parser.on("error", hearWrong);
  parser.on("warn", hearWrong);
  parser.on("attention", (declared, _, place) => {
    if (/\[|<!ENTITY/i.test(declared)) refuse("it declares a document type of its own", place().line + 1);
  });
  parser.on("openTag", (name, attributes, _decode, _isWhole, place) => {
    if (parents.length >= deepest) refuse(`its elements lie more than ${deepest} deep`, place().line + 1);
    const local = localName(name);
    listener.open(local, (attribute) => decoded(attributes()[attribute] ?? "").trim(), parents);
    parents.push(local);
    texts.push("");
  });
  parser.on("text", (text, _, place) => {
    if (text.length > longestDecoded && text.includes("&")) refuse("a text of it is too long", place().line + 1);
    hearText(decoded(text));
  });
  parser.on("cdata", hearText);
  parser.on("closeTag", () => {
    const name = parents.pop() ?? "";
    listener.close(name, (texts.pop() ?? "").trim(), parents);
  });
  try {
    parser.parse(document);
  } catch (error) {
    if (error !== left) throw error;
  }
  return wrong;
}

/** The name of a document's first element without its prefix; empty where there is none. */
export function rootName(document: string): string {
  let at = document.indexOf("<");
  while (at >= 0) {
    const [, opening = "", local = ""] = /^<(!--|[?!]|)(?:[\w.-]+:)?([\w.-]*)/.exec(document.slice(at, at + 100)) ?? [];
    if (opening === "") return local;
    const ending = opening === "!--" ? "-->" : opening === "?" ? "?>" : ">";
    const end = document.indexOf(ending, at);
    at = end < 0 ? -1 : document.indexOf("<", end);
  }
  return "";
}

function localName(name: string): string {
  return name.slice(name.indexOf(":") + 1);
}

/** The parser tells no line of what is missing or too much at the end. */
function isAtEnd(message: string, document: string): boolean {
  const isAfterRoot = document.slice(document.lastIndexOf(">") + 1).trim() !== "";
  return /end of file|missing start/.test(message) || (/outside of root/.test(message) && isAfterRoot);
}

function lineCount(document: string): number {
  return document.trimEnd().split("\n").length;
}

function notXml(file: string, why: string, line: number): Result<null> {
  return fail(
    "not-xml",
    `The file is not well-formed XML, or it was cut off: ${why}.`,
    `${file}, line ${line}`,
    "Export it again, or open it in a text editor and mend that line.",
  );
}

const signs: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

/** References to characters replaced; those that name none stay as they stand. */
function decoded(text: string): string {
  if (!text.includes("&")) return text;
  return text.replace(/&(?:#(\d{1,7})|#x([\da-f]{1,6})|(amp|lt|gt|quot|apos));/gi, (_, decimal, hex, sign) =>
    sign === undefined
      ? character(decimal === undefined ? Number.parseInt(hex, 16) : Number(decimal))
      : (signs[String(sign).toLowerCase()] ?? ""),
  );
}

function character(code: number): string {
  const isLetter = code > 0 && code <= 0x10ffff && (code < 0xd800 || code > 0xdfff);
  return isLetter ? String.fromCodePoint(code) : "\uFFFD";
}
