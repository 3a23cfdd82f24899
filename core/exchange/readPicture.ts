import type { LogoRef } from "../model/logoRef.ts";
import { fail, ok, type Result } from "../model/result.ts";
import { pictureHead } from "./pictureHead.ts";

type Picture = Omit<LogoRef, "hash">;

/** Largest file a picture of a title block may be, bytes: every sheet of a preview carries it. */
const mostBytes = 500_000;
/** Most points of a picture; painting takes four bytes each. */
const mostPoints = 16_000_000;

/**
 * What a picture file is and its size. A PNG or JPEG by its head; an SVG that needs nothing but itself: no script, nothing fetched from
 * elsewhere, no lettering, which every machine would set in a font of its own.
 *
 * Faults: not-a-picture, picture-too-large, picture-not-plain.
 *
 * @param name  what the file is called, for the faults
 */
export function readPicture(name: string, bytes: Uint8Array): Result<Picture> {
  if (bytes.length > mostBytes)
    return tooLarge(name, `${Math.ceil(bytes.length / 1000)} kB, more than ${mostBytes / 1000} kB`);
  const svg = svgText(bytes);
  const trouble = svg === null ? null : reachesOut(svg);
  if (trouble !== null)
    return fail(
      "picture-not-plain",
      `The SVG ${trouble}.`,
      name,
      "Save it as a plain SVG, its lettering turned into outlines.",
    );
  const picture = headOf(bytes) ?? (svg === null ? null : svgHead(svg));
  if (!picture) return notAPicture(name);
  const { widthPx, heightPx } = picture;
  if (widthPx * heightPx > mostPoints)
    return tooLarge(name, `${widthPx} x ${heightPx} points, more than ${mostPoints / 1e6} million`);
  return ok(picture);
}

/** The file is none of the pictures that can be drawn. */
export function notAPicture(name: string): Result<never> {
  return fail(
    "not-a-picture",
    "This is no picture that can be drawn.",
    name,
    "Choose a whole PNG, JPEG or SVG file that says its size.",
  );
}

function tooLarge(name: string, how: string): Result<never> {
  return fail(
    "picture-too-large",
    `The picture is too large: ${how}.`,
    name,
    "Save a smaller one; a logo prints about an inch wide.",
  );
}

function headOf(bytes: Uint8Array): Picture | null {
  const head = pictureHead(bytes);
  return head && { kind: head.kind, widthPx: head.widthPx, heightPx: head.heightPx };
}

const wholeSize = (kind: Picture["kind"], widthPx: number, heightPx: number): Picture | null =>
  widthPx >= 1 && heightPx >= 1 ? { kind, widthPx: Math.round(widthPx), heightPx: Math.round(heightPx) } : null;

/** The file as SVG text without its comments; null where its root is no svg element. */
function svgText(bytes: Uint8Array): string | null {
  if (bytes[0] === 0xff || bytes[0] === 0x89) return null;
  let text = "";
  for (let at = 0; at < bytes.length; at += 8192) text += String.fromCharCode(...bytes.subarray(at, at + 8192));
  const bare = text.replace(/<!--[\s\S]*?-->/g, "");
  return /^[^<]*(<\?[^>]*>\s*)*(<!DOCTYPE[^>]*>\s*)?<svg[\s>]/.test(bare) ? bare : null;
}

function reachesOut(svg: string): string | null {
  if (/<script|\son[a-z]+\s*=|javascript:/i.test(svg)) return "has a script in it";
  if (/<!ENTITY|<foreignObject|<style[^>]*>[^<]*@import/i.test(svg)) return "has parts that are not of the picture";
  const leads = [...svg.matchAll(/(?:href\s*=\s*["']|url\(\s*["']?)([^"')]*)/gi)].map((one) => one[1] ?? "");
  if (leads.some((one) => !/^\s*(#|data:image\/(png|jpeg);)/.test(one))) return "leads to something outside itself";
  return /<(text|tref|tspan)[\s>]/i.test(svg) ? "has lettering in it, which prints otherwise on every machine" : null;
}

const acrossPx = 1000;

/** Its shape counts, not its size: it is drawn as finely as the paper takes it. */
function svgHead(svg: string): Picture | null {
  const root = /<svg\b[^>]*>/.exec(svg)?.[0] ?? "";
  const length = (name: string) =>
    Number(new RegExp(`\\s${name}\\s*=\\s*["']\\s*([\\d.]+)(?:px|mm|cm|in|pt|pc)?\\s*["']`).exec(root)?.[1]);
  const box =
    /\sviewBox\s*=\s*["']([^"']*)["']/
      .exec(root)?.[1]
      ?.trim()
      .split(/[\s,]+/)
      .map(Number) ?? [];
  const [width, height] = box.length === 4 ? box.slice(2) : [length("width"), length("height")];
  if (!(width && height && width > 0 && height > 0 && Number.isFinite(width / height))) return null;
  return wholeSize("svg", acrossPx, (acrossPx * height) / width);
}
