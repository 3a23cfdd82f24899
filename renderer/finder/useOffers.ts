import { useMemo, useState } from "react";
import { useStore } from "zustand";
import { machine } from "../app/machine.ts";
import { useOpenRoute, useSession, useView } from "../app/useSession.ts";
import { fixedOffers, type Offer, rowOffer, type SheetTitle } from "./offers.ts";
import { openRouteIndex } from "./routeIndex.ts";
import { openWordIndex } from "./wordIndex.ts";

const mostShown = 40;
/** What was lately gone to comes first among equals. */
const recentBonus = 0.15;

/** What answers to the words typed, best first; with nothing typed, what was lately gone to, then every action. */
export function useOffers(typed: string, isOpen: boolean): readonly Offer[] {
  const session = useSession();
  const open = useOpenRoute();
  const recent = useStore(machine, (state) => state.recent);
  const titles = useSheetTitles();
  const plant = open?.plant ?? null;
  const rows = useMemo(() => (plant ? openRouteIndex(plant) : null), [plant]);
  const route = open?.route;

  const fixed = useMemo(() => {
    const offers = isOpen ? fixedOffers(session, titles) : [];
    const index = openWordIndex();
    for (const one of offers) index.put(one.key, `${one.name} ${one.kind}`);
    return { offers, index, byKey: new Map(offers.map((one) => [one.key, one])) };
  }, [isOpen, session, titles]);

  return useMemo(() => {
    if (!isOpen) return [];
    // the route is here to look again after an edit: its index holds what changed only
    if (route) rows?.catchUp();
    const offerOf = (key: string): Offer | null => {
      const place = rows?.placeOf(key);
      return place ? rowOffer(session, place) : (fixed.byKey.get(key) ?? null);
    };
    if (typed.trim() === "") {
      const late = recent.flatMap((key) => offerOf(key) ?? []);
      const lateKeys = new Set(recent);
      return [...late, ...fixed.offers.filter((one) => one.key.startsWith("action/") && !lateKeys.has(one.key))];
    }
    const bonus = (key: string): number => (recent.includes(key) ? recentBonus : 0);
    return [...(rows?.find(typed) ?? []), ...fixed.index.find(typed)]
      .map(({ key, score }) => ({ key, score: score + bonus(key) }))
      .sort((a, b) => b.score - a.score)
      .slice(0, mostShown)
      .flatMap(({ key }) => offerOf(key) ?? []);
  }, [isOpen, typed, rows, route, fixed, recent, session]);
}

/** Sheets of the last preview, also after it was closed. */
function useSheetTitles(): readonly SheetTitle[] {
  const sheets = useView((state) => state.sheets);
  const [last, setLast] = useState<readonly SheetTitle[]>([]);
  if (sheets && sheets !== last) setLast(sheets);
  return sheets ?? last;
}
