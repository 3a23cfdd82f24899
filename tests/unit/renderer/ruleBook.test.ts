import { expect, test } from "vitest";
import { ruleRegister } from "../../../core/rules/register.ts";
import { glossary } from "../../../renderer/help/glossary.ts";
import { ruleBook } from "../../../renderer/help/ruleBook.ts";
import { searchHelp } from "../../../renderer/help/searchHelp.ts";

test("the rule book prints every rule of the register with limit and trust in words, errors first", () => {
  const book = ruleBook();
  expect(book.map((one) => one.id).sort()).toEqual(ruleRegister.map((one) => one.id).sort());
  expect(book[0]?.severity).toBe("error");
  const standoff = book.find((one) => one.id === "terminal-standoff");
  expect(standoff?.compares).toContain("against the terminal offset of the settings");
  expect(book.filter((one) => one.limitFrom === "" || /[a-z][A-Z]/.test(`${one.limitFrom} ${one.looksAt}`))).toEqual(
    [],
  );
});

test("a word of the trade stands once, in the order of the alphabet, with a meaning", () => {
  const terms = glossary.map((one) => one.term);
  expect(terms).toEqual([...new Set(terms)].sort((a, b) => a.localeCompare(b, "en")));
  expect(glossary.filter((one) => one.meaning.length < 20)).toEqual([]);
});

test("the search of the help finds a rule by its title and a term by its meaning", () => {
  expect(searchHelp("drop reach").map((one) => one.id)).toContain("rules");
  expect(searchHelp("seven steel wires").map((one) => one.id)).toEqual(["glossary"]);
  expect(searchHelp("no such thing anywhere")).toEqual([]);
});
