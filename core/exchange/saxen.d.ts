/** The part of saxen used here; the package comes without types. */
declare module "saxen" {
  type Decode = (text: string) => string;
  type Place = () => { readonly line: number };
  export class Parser {
    on(event: "error" | "warn", hear: (error: Error, place: Place) => void): this;
    on(
      event: "openTag",
      hear: (
        name: string,
        attributes: () => Record<string, string>,
        decode: Decode,
        isWhole: boolean,
        place: Place,
      ) => void,
    ): this;
    on(event: "text" | "attention", hear: (text: string, decode: Decode, place: Place) => void): this;
    on(event: "cdata", hear: (text: string) => void): this;
    on(event: "closeTag", hear: () => void): this;
    parse(document: string): void;
  }
}
