import type { Page } from "playwright-core";

/** What a walk by Tab over a page came to. */
export type TabWalk = {
  /** Controls met, in order, by their names. */
  readonly met: readonly string[];
  /** Controls met a second time before the walk was round: the focus is stuck or goes in circles. */
  readonly again: readonly string[];
  /** Controls that can be used and that the walk did not meet. */
  readonly missed: readonly string[];
  /** Controls whose ring cannot be seen: none, too thin, or with less than 3 to 1 against what is around it. */
  readonly ringless: readonly string[];
};

const mostPresses = 600;

/** Walks over the page by Tab from its beginning until the walk is round. */
export async function walkByTab(page: Page): Promise<TabWalk> {
  await page.evaluate(prepare);
  const met: string[] = [];
  const again: string[] = [];
  const ringless: string[] = [];
  for (let press = 0; press < mostPresses; press += 1) {
    await page.keyboard.press("Tab");
    const here = await page.evaluate(() => window.__walk?.look() ?? null);
    // past the end the browser's own controls come, then the page again
    if (here === null) continue;
    if (here.count > 1) {
      if (here.isFirst) break;
      again.push(here.name);
      if (again.length > 3) break;
      continue;
    }
    met.push(here.name);
    if (here.ringContrast < 3) ringless.push(`${here.name} (${here.ringContrast.toFixed(1)})`);
  }
  const missed = await page.evaluate(() => window.__walk?.missed() ?? []);
  return { met, again, missed, ringless };
}

type Walk = {
  readonly look: () => {
    readonly name: string;
    readonly count: number;
    readonly isFirst: boolean;
    readonly ringContrast: number;
  } | null;
  readonly missed: () => readonly string[];
};

declare global {
  interface Window {
    __walk?: Walk;
  }
}

/** Runs in the page: notes which controls have had the focus. */
function prepare(): void {
  const counts = new Map<Element, number>();
  const pen = document.createElement("canvas").getContext("2d", { willReadFrequently: true });
  const rgba = (colour: string): readonly number[] => {
    if (!pen) return [0, 0, 0, 0];
    pen.clearRect(0, 0, 1, 1);
    pen.fillStyle = colour;
    pen.fillRect(0, 0, 1, 1);
    return [...pen.getImageData(0, 0, 1, 1).data];
  };
  const brightness = (colour: readonly number[]): number => {
    const [r = 0, g = 0, b = 0] = colour.map((one) => {
      const part = one / 255;
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  /** The ring stands outside the control, or just inside one that fills its place: what is around it is its parent's colour. */
  const around = (element: Element): readonly number[] => {
    for (let one = element.parentElement; one; one = one.parentElement) {
      const colour = rgba(getComputedStyle(one).backgroundColor);
      if ((colour[3] ?? 0) > 250) return colour;
    }
    return rgba("Canvas");
  };
  const nameOf = (element: Element): string => {
    const labelled = element instanceof HTMLInputElement ? element.labels?.[0]?.textContent : null;
    const name = element.ariaLabel ?? labelled ?? element.textContent ?? "";
    return `${element.tagName.toLowerCase()} ${name.trim().slice(0, 60)}`;
  };
  const ringContrast = (element: Element): number => {
    const { outlineStyle, outlineWidth, outlineColor } = getComputedStyle(element);
    if (outlineStyle === "none" || Number.parseFloat(outlineWidth) < 2) return 0;
    const [a, b] = [brightness(rgba(outlineColor)), brightness(around(element))];
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  };
  const dialog = document.querySelector("dialog[open], [role=dialog]");
  const isGroupMet = (element: Element): boolean =>
    document.querySelector(`input[type=radio][name="${element.getAttribute("name")}"]:checked`) !== null;
  let last: Element | null = null;
  const isReachable = (element: Element): boolean =>
    element instanceof HTMLElement &&
    element.tabIndex >= 0 &&
    // a tool bar hands the focus on to one of its buttons
    element.role !== "toolbar" &&
    !element.matches(":disabled") &&
    // arrows go from the chosen one of a group to the others
    !(element.matches("input[type=radio]:not(:checked)") && isGroupMet(element)) &&
    element.checkVisibility({ visibilityProperty: true }) &&
    element.closest("[inert]") === null;
  window.__walk = {
    look() {
      const element = document.activeElement;
      if (!element || element === document.body || element.hasAttribute("data-radix-focus-guard")) return null;
      // the browser stops at day, month and year of one field
      if (element === last && element.matches("input[type=date]")) return null;
      last = element;
      const count = (counts.get(element) ?? 0) + 1;
      const [first = element] = counts.keys();
      counts.set(element, count);
      return { name: nameOf(element), count, isFirst: element === first, ringContrast: ringContrast(element) };
    },
    missed: () =>
      [...(dialog ?? document).querySelectorAll("a[href], button, input, select, textarea, [tabindex]")]
        .filter((one) => isReachable(one) && !counts.has(one) && !one.hasAttribute("data-radix-focus-guard"))
        .map(nameOf),
  };
  const { activeElement } = document;
  if (!dialog && activeElement instanceof HTMLElement) activeElement.blur();
}
