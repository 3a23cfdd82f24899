import type { Page } from "playwright-core";
import { fiberWay } from "../../core/plant/fiberWay.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { type Shot, shootFiber } from "../fixtures/traces/shootFiber.ts";
import type { OpenWindow } from "./openWindow.ts";

/** The demo's longest way of a fiber that goes on through a closure, and the cable it begins in. */
export function longestWay(plant: Plant, fromEnd: "feed" | "far" = "feed") {
  const uses = [...plant.route().fiberUse.values()].filter((one) => one.purpose === "lateral");
  const ways = uses.flatMap(({ cableId, fiber }) => {
    const way = fiberWay(plant, { cableId, fiber }, fromEnd);
    return way ? [{ way, cable: plant.rowOf("cable", cableId), fiber }] : [];
  });
  const [longest] = ways.sort((a, b) => b.way.lengthM - a.way.lengthM);
  if (!longest) throw new Error("the demo has no lateral");
  return longest;
}

/** A file an instrument would have saved of that fiber. */
export function fileOf(plant: Plant, fileName: string, wishes: Partial<Shot> = {}, fromEnd: "feed" | "far" = "feed") {
  const { way, cable, fiber } = longestWay(plant, fromEnd);
  const told = { cableId: cable.name, fiberId: String(fiber), locationA: fromEnd === "feed" ? "Hub" : "" };
  return {
    name: fileName,
    mimeType: "application/octet-stream",
    buffer: Buffer.from(shootFiber(way, { ...told, ...wishes })),
  };
}

/** The field of the traces that takes files. */
export const bring = (page: Page) => page.locator("input[type=file][accept='.sor']");

/** The list of what a trace shows. */
export const events = (page: Page) => page.getByRole("table", { name: "Events of the trace" });

/** Brings in two traces, one of no fiber yet, and shows that of a bent fiber. */
export async function showTraces({ page, session }: OpenWindow): Promise<void> {
  const { way } = longestWay(session.plant);
  const bend = { fiberM: way.lengthM * 0.4, lossDb: 0.7 };
  const whose = { cableId: "", fiberId: "", locationA: "" };
  await page.getByLabel("Brought by").fill("R. Vance");
  await bring(page).setInputFiles([
    fileOf(session.plant, "a.sor", { bend }),
    fileOf(session.plant, "b.sor", { ...whose, seed: 2 }),
  ]);
  await events(page).getByText("nothing drawn").waitFor();
}
