// As much as a test asks of fontkit, which comes without types.
declare module 'fontkit' {
  export function create(bytes: Buffer): { readonly hasGlyphForCodePoint: (code: number) => boolean };
}
