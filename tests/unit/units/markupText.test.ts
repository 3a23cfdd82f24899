import { expect, test } from "vitest";
import { markupText } from "../../../core/units/markupText.ts";

test("signs of the markup go by their names", () => {
  expect(markupText('3 < 4 & "ß" > 2')).toBe("3 &lt; 4 &amp; &quot;ß&quot; &gt; 2");
});

test("what XML does not admit becomes the replacement sign, and a letter of two halves stays", () => {
  expect(markupText("a\u0000b\uD800c\uFFFFd 𝄞\te")).toBe("a\uFFFDb\uFFFDc\uFFFDd 𝄞\te");
});
