import { expect, it } from "vitest";
import { readPicture } from "../../../core/exchange/readPicture.ts";

const bytesOf = (text: string) => new TextEncoder().encode(text);
const svgOf = (inside: string, root = 'viewBox="0 0 200 50"') =>
  readPicture(
    "logo.svg",
    bytesOf(
      `<?xml version="1.0"?>\n<!-- drawn > by us -->\n<svg xmlns="http://www.w3.org/2000/svg" ${root}>${inside}</svg>`,
    ),
  );
const pngOf = (width: number, height: number) => {
  const bytes = new Uint8Array(33);
  bytes.set([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52]);
  const view = new DataView(bytes.buffer);
  view.setUint32(16, width);
  view.setUint32(20, height);
  return bytes;
};
const codeOf = (read: ReturnType<typeof readPicture>) => (read.ok ? "ok" : read.fault.code);

it("reads the size of a PNG, and of a JPEG behind its other segments", () => {
  expect(readPicture("a.png", pngOf(640, 200))).toMatchObject({ value: { kind: "png", widthPx: 640, heightPx: 200 } });
  const jpeg = new Uint8Array([
    0xff, 0xd8, 0xff, 0xe0, 0, 4, 1, 2, 0xff, 0xc4, 0, 3, 0, 0xff, 0xc2, 0, 11, 8, 0, 50, 1, 44, 1, 1, 0x11, 0,
  ]);
  expect(readPicture("a.jpg", jpeg)).toMatchObject({ value: { kind: "jpeg", widthPx: 300, heightPx: 50 } });
});

it("reads the shape of an SVG from its view box, or from its width and height", () => {
  expect(svgOf("<path d='M0 0h9'/>")).toMatchObject({ value: { kind: "svg", widthPx: 1000, heightPx: 250 } });
  expect(svgOf("<path/>", 'width="40mm" height="20mm"')).toMatchObject({ value: { heightPx: 500 } });
  expect(codeOf(svgOf("<path/>", 'width="100%"'))).toBe("not-a-picture");
});

it.each([
  ["a script", "<script>alert(1)</script>"],
  ["a handler", '<rect onload="x()"/>'],
  ["a picture from elsewhere", '<image href="https://example.org/a.png"/>'],
  ["a fill from elsewhere", '<rect fill="url(http://example.org/#a)"/>'],
  ["an imported style", "<style>@import 'a.css'</style>"],
  ["lettering", "<text>Marrow</text>"],
  ["a foreign part", "<foreignObject/>"],
])("refuses an SVG with %s", (_what, inside) => {
  expect(codeOf(svgOf(inside))).toBe("picture-not-plain");
});

it("takes an SVG that leads only to its own parts", () => {
  expect(codeOf(svgOf('<rect fill="url(#a)"/><use href="#b"/><image href="data:image/png;base64,AA=="/>'))).toBe("ok");
});

it("refuses what is too large, and what is no picture", () => {
  expect(codeOf(readPicture("a.png", pngOf(9000, 9000)))).toBe("picture-too-large");
  expect(codeOf(readPicture("a.png", new Uint8Array(500_001)))).toBe("picture-too-large");
  for (const bytes of [
    bytesOf(""),
    bytesOf("hello"),
    bytesOf("<html><svg/></html>"),
    pngOf(0, 5),
    pngOf(3, 3).subarray(0, 20),
    new Uint8Array([0xff, 0xd8, 0xff, 0xd9]),
  ])
    expect(codeOf(readPicture("a", bytes))).toBe("not-a-picture");
});
