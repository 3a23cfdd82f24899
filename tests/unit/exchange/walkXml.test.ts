import { describe, expect, test } from "vitest";
import { rootName, walkXml } from "../../../core/exchange/walkXml.ts";

function heard(document: string) {
  const events: string[] = [];
  const walked = walkXml("a.xml", document, {
    open: (name, attributeOf, parents) => events.push(`<${[...parents, name].join("/")} ${attributeOf("id")}`),
    close: (name, text) => events.push(`${name}: ${text}`),
  });
  return { events, walked };
}

describe("a document heard element by element", () => {
  test("names come without prefix, with who is around them; text is what stands right inside", () => {
    const { events, walked } = heard('<k:a xmlns:k="u" id=" &quot;1&quot; ">x <b/><![CDATA[<y>]]><!-- z --></k:a>');
    expect(walked.ok).toBe(true);
    expect(events).toEqual(['<a "1"', "<a/b ", "b: ", "a: x <y>"]);
  });

  test.each([
    ["cut off", "<a>\n<b>\n</b>\n", 3],
    ["with tags that cross", "<a>\n<b>\n</a></b>", 3],
    ["with an attribute told twice", '<a>\n<b id="1" id="2"/></a>', 2],
    ["with an attribute without quotes", "<a>\n\n<b id=1/></a>", 3],
    ["that is empty", "", 1],
    ["with words around it", "<a/>\nmore", 2],
  ])("a document %s is refused at its line", (_, document, line) => {
    expect(heard(document).walked).toMatchObject({
      ok: false,
      fault: { code: "not-xml", where: `a.xml, line ${line}` },
    });
  });

  test("entities of its own are refused before anything is read: a few lines of them could fill the memory", () => {
    const bomb = `<?xml version="1.0"?>\n<!DOCTYPE a [<!ENTITY x "xxxxxxxx">\n<!ENTITY y "&x;&x;&x;&x;">]>\n<a>&y;</a>`;
    expect(heard(bomb)).toMatchObject({
      events: [],
      walked: { ok: false, fault: { code: "not-xml", where: "a.xml, line 2" } },
    });
    expect(heard('<!DOCTYPE a [<!ENTITY x SYSTEM "file:///etc/passwd">]><a>&x;</a>').walked.ok).toBe(false);
    expect(heard('<!DOCTYPE a SYSTEM "a.dtd"><a>&x;</a>').events).toEqual(["<a ", "a: &x;"]);
  });

  test("elements nested deeper than any file of places are refused, not climbed", () => {
    expect(heard("<a>".repeat(90) + "</a>".repeat(90)).walked.ok).toBe(true);
    expect(heard("<a>".repeat(100_000)).walked).toMatchObject({ ok: false, fault: { code: "not-xml" } });
  });

  test("a tag of nothing but quotes, and a text of nothing but references, are refused at once", () => {
    const quotes = `<a id=1 ${"'".repeat(2_000_000)}/>`;
    expect(heard(quotes).walked).toMatchObject({ ok: false, fault: { code: "not-xml", where: "a.xml, line 1" } });
    expect(heard(`<a>${"&amp;".repeat(1_000_000)}</a>`).walked).toMatchObject({
      ok: false,
      fault: { what: expect.stringContaining("too long") },
    });
  });

  test.each([
    ['<?xml version="1.0"?><!-- <gpx> --><!DOCTYPE kml><k:kml xmlns:k="u"/>', "kml"],
    ["\uFEFF <gpx\nversion='1.1'>", "gpx"],
    ["<!-- never closed", ""],
    ["no tag at all", ""],
    ["<<<<", ""],
  ])("what %s is, is told by its first element", (document, root) => {
    expect(rootName(document)).toBe(root);
  });
});
