/** The package's own types are not reachable through its exports; this is the part that the tests use. */
declare module 'spectral-color' {
  interface Table<Sample> {
    readonly shape: { readonly start: number; readonly end: number; readonly interval: number };
    readonly samples: readonly Sample[];
  }
  export const cmfs: { readonly CIE_1931_2DEG: Table<readonly [number, number, number]> };
  export const illuminants: { readonly D65: Table<number> };
}
