import { expect, test } from "vitest";
import { unpackTags } from "../../../core/exchange/packedTags.ts";

test.each([
  ['"power"=>"pole"', "power=pole"],
  [String.raw`"power"=>"pole","note"=>"a \"tall\" one"`, 'power=pole, note=a "tall" one'],
  ["wood, leaning", "wood, leaning"],
  ["", ""],
])("%s is kept as %s", (packed, plain) => expect(unpackTags(packed)).toBe(plain));
