// What is used of pdfmake, which comes without types of this version, and of the letters that come with it.
declare module 'pdfmake' {
  interface Output {
    getBuffer(): Promise<Buffer>;
  }
  const pdfmake: {
    setFonts(fonts: Readonly<Record<string, Readonly<Record<string, Buffer>>>>): void;
    setUrlAccessPolicy(allows: (url: string) => boolean): void;
    setLocalAccessPolicy(allows: (path: unknown) => boolean): void;
    createPdf(definition: object): Output;
  };
  export default pdfmake;
}

declare module 'pdfmake/build/vfs_fonts.js' {
  const files: Readonly<Record<string, string>>;
  export default files;
}
