import { resolve } from "node:path";

/**
 * The route files a start of the program names; its own script and switches are left out.
 *
 * @param words   the command line
 * @param folder  folder relative names are below
 */
export function routeFiles(words: readonly string[], folder: string): readonly string[] {
  return words.filter((word) => !word.startsWith("-") && /\.strand$/i.test(word)).map((word) => resolve(folder, word));
}
