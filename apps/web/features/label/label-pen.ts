import type PDFDocument from 'pdfkit';
import { fontFile } from '../../ui/paper/font-file.ts';

/** Points a millimetre. */
export const MM = 72 / 25.4;

/** Letters that the first file of the typeface has not, and the second has. */
const MORE = /[\u0100-\u02BA\u1E00-\u1EFF]/;

/** Writes in the screens' typeface, letter by letter from the file that has it. */
export class LabelPen {
  readonly #widths = new Map<string, number>();

  constructor(private readonly doc: PDFDocument) {
    for (const subset of ['latin', 'latin-ext']) {
      for (const weight of [400, 700]) doc.registerFont(`${subset}-${weight}`, fontFile(subset, weight, 'normal'));
    }
  }

  /** Reads what every label needs, a piece a turn: all at once, it would keep others waiting for a tenth of a second. */
  *open(): Iterable<unknown> {
    for (const font of ['latin-400', 'latin-700']) {
      yield this.doc.font(font);
      yield this.doc.widthOfString('0');
    }
  }

  /** Writes the letters that were used, a file a turn. What is not written here is when the document ends. */
  *close(): Iterable<unknown> {
    for (const font of Object.values(this.doc._fontFamilies ?? {})) yield font.finalize();
  }

  /** At one point of size. */
  widthOf = (text: string, isBold: boolean): number => {
    const key = `${isBold ? 'b' : 'p'}${text}`;
    let width = this.#widths.get(key);
    if (width === undefined) {
      width = this.#runs(text, isBold).reduce((sum, { font, run }) => sum + this.doc.font(font).fontSize(100).widthOfString(run) / 100, 0);
      this.#widths.set(key, width);
    }
    return width;
  };

  /** Points. */
  write(text: string, isBold: boolean, size: number, x: number, y: number): void {
    let at = x;
    for (const { font, run } of this.#runs(text, isBold)) {
      this.doc.font(font).fontSize(size).fillColor('#000').text(run, at, y, { lineBreak: false });
      at += this.doc.widthOfString(run);
    }
  }

  #runs(text: string, isBold: boolean): { font: string; run: string }[] {
    const runs: { font: string; run: string }[] = [];
    for (const letter of text) {
      const font = `${MORE.test(letter) ? 'latin-ext' : 'latin'}-${isBold ? 700 : 400}`;
      const last = runs.at(-1);
      if (last?.font === font) last.run += letter;
      else runs.push({ font, run: letter });
    }
    return runs;
  }
}
