import { fixedText } from "./fixedText.ts";

/** An amount of money to the hundredth, thousands apart; the catalogue's prices say in what currency. */
export function moneyText(amount: number): string {
  const [whole = "", cents] = fixedText(amount, 2).split(".");
  return `${whole.replace(/\B(?=(\d{3})+$)/g, ",")}.${cents}`;
}
