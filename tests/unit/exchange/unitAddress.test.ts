import { expect, test } from "vitest";
import { addressKey, joinAddress } from "../../../core/exchange/unitAddress.ts";

const parts = { address: "", houseNumber: "", houseName: "", street: "", unit: "" };

test.each([
  ["number and street", { houseNumber: "12", street: "Elm St" }, "12 Elm St", ""],
  [
    "a house with a name",
    { houseName: "Cleveland Lodge", houseNumber: "1", street: "Albany Road" },
    "Cleveland Lodge, 1 Albany Road",
    "",
  ],
  ["a unit beside a full address", { address: "12 Elm St", unit: "2" }, "12 Elm St Unit 2", "12 Elm St"],
  ["a unit that names itself", { address: "12 Elm St", unit: "Apt 2" }, "12 Elm St Apt 2", "12 Elm St"],
  ["a unit already in the address", { address: "12 Elm St, Apt 2", unit: "2" }, "12 Elm St, Apt 2", "12 Elm St"],
  ["a unit only in the address", { address: "12 Elm St #4" }, "12 Elm St #4", "12 Elm St"],
  ["a lettered unit on a street", { street: "Aalin Court", unit: "B" }, "Aalin Court Unit B", "Aalin Court"],
])("%s makes one line", (_, given, address, building) => {
  expect(joinAddress({ ...parts, ...given })).toEqual({ address, building });
});

test("a street alone is no address", () => expect(joinAddress({ ...parts, street: "Elm St" })).toBeNull());

test("case, blanks and commas do not make another address", () => {
  expect(addressKey("12  Elm St., Apt 2")).toBe(addressKey("12 ELM ST APT 2"));
});
