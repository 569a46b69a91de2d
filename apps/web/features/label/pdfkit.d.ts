/** As much of the library as is used here; it brings no types of its own. Points, from the upper left corner. */
declare module 'pdfkit' {
  import type { Readable } from 'node:stream';

  interface PageSettings {
    readonly size: readonly [number, number];
    readonly margin: number;
  }
  interface DocumentSettings extends PageSettings {
    readonly autoFirstPage: boolean;
    readonly lang?: string;
    readonly displayTitle?: boolean;
    readonly compress?: boolean;
    readonly info?: { readonly Title: string };
    /** Null: none besides those that are registered. */
    readonly font?: null;
  }

  interface UsedFont {
    /** Puts the letters that were used into the document; a second time does nothing. */
    finalize(): void;
  }

  export default class PDFDocument extends Readable {
    /** Those that were used. The library keeps it to itself: it may be gone one day. */
    readonly _fontFamilies?: Readonly<Record<string, UsedFont>>;
    constructor(settings: DocumentSettings);
    addPage(settings?: PageSettings): this;
    registerFont(name: string, file: string): this;
    font(name: string): this;
    fontSize(size: number): this;
    widthOfString(text: string): number;
    text(text: string, x: number, y: number, settings: { readonly lineBreak: false }): this;
    rect(x: number, y: number, width: number, height: number): this;
    moveTo(x: number, y: number): this;
    lineTo(x: number, y: number): this;
    lineWidth(width: number): this;
    fill(colour: string): this;
    fillColor(colour: string): this;
    stroke(colour: string): this;
    save(): this;
    restore(): this;
    translate(x: number, y: number): this;
    scale(x: number, y: number): this;
    end(): void;
  }
}
