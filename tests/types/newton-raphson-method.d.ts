/** The part of newton-raphson-method that the tests use; it ships no types. */
declare module "newton-raphson-method" {
  /** The root near a guess, by differences of the function; false where the search did not settle. */
  function newtonRaphson(
    of: (x: number) => number,
    guess: number,
    options?: { readonly tolerance?: number; readonly maxIterations?: number; readonly h?: number },
  ): number | false;
  export = newtonRaphson;
}
