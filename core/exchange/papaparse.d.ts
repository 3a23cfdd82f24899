/** The part of papaparse used here. Its published types pull Node's in, and core has none. */
declare module "papaparse" {
  type ParseError = { readonly type: string; readonly code: string; readonly row?: number };
  const papa: {
    parse<Row>(
      text: string,
      config: { delimiter: string; newline: string; delimitersToGuess: readonly string[] },
    ): { readonly data: readonly Row[]; readonly errors: readonly ParseError[] };
    unparse(
      table: { fields: readonly string[]; data: readonly (readonly (string | number | boolean | null)[])[] },
      config: { escapeFormulae: RegExp; newline: string },
    ): string;
  };
  export = papa;
}
