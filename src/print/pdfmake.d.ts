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

/** What draws each piece, and pdfkit's document that it draws on. */
declare module 'pdfmake/js/Renderer.js' {
  /** What a piece of text is, as an inline of pdfmake's description carries it. */
  export type Role = 'H1' | 'H2' | 'P' | 'Artifact';

  /** A whole and the parts that it has: of a table its rows and cells, of a list its items. Lines of one key are one part. */
  export interface Part {
    readonly type: 'Table' | 'TR' | 'TH' | 'TD' | 'L' | 'LI' | 'LBody';
    readonly key: string;
    /** Of a cell that heads others. */
    readonly scope?: 'Column' | 'Row';
  }

  export interface Element {
    add(child: unknown): Element;
    end(): void;
  }

  export interface Tagged {
    struct(type: string, options?: { readonly alt?: string; readonly scope?: 'Column' | 'Row' }): Element;
    addStructure(element: Element): void;
    markContent(tag: 'Artifact'): void;
    markStructureContent(tag: string): unknown;
    endMarkedContent(): void;
  }

  export interface Line {
    readonly inlines: readonly {
      readonly text: string;
      readonly role?: Role;
      readonly parts?: readonly Part[];
    }[];
    readonly lastLineInParagraph?: boolean;
  }

  interface Rendering {
    readonly pdfDocument: Tagged;
  }

  interface Class {
    readonly prototype: {
      renderLine: (this: Rendering, line: Line, x: number, y: number) => void;
      renderSVG: (this: Rendering, picture: { readonly alt?: string }) => void;
      renderVector: (this: Rendering, vector: unknown) => void;
    };
  }

  const renderer: Class | { readonly default: Class };
  export default renderer;
}
