import type { Readable } from 'node:stream';
import { setImmediate as nextTurn } from 'node:timers/promises';
import PDFDocument from 'pdfkit';
import { layoutOf } from './label-layout.ts';
import { LabelPen, MM } from './label-pen.ts';
import type { LabelQr } from './label-qr.ts';
import { type LabelSays, placedWords } from './label-words.ts';
import { correctionFor, drawnAt, type Printer } from './printer.ts';
import { labelsOn, type LabelSheet, type Rectangle } from './sheets.ts';

export interface PrintedLabel extends LabelSays {
  readonly qr?: LabelQr | undefined;
}

export interface LabelPrint {
  readonly title: string;
  readonly language: string;
  readonly sheet: LabelSheet;
  readonly printer: Printer;
  /** The first label that is still on the sheet, from 1. */
  readonly start: number;
  readonly isWaterproof: boolean;
  /** Lines along which to cut what is not cut beforehand. */
  readonly hasLines: boolean;
  /** Made one by one while they are drawn: working out a thousand codes takes longer than drawing them. */
  readonly labels: Iterable<PrintedLabel>;
}

/**
 * Label sheets as a PDF that flows out while it is drawn. After each label others have their turn: a thousand of them
 * must not keep the server from whoever logs at the bench meanwhile.
 */
export function labelsPdf(print: LabelPrint): Readable {
  const { width, height } = print.sheet;
  const doc = new PDFDocument({ size: [width * MM, height * MM], margin: 0, autoFirstPage: false, font: null, lang: print.language, displayTitle: true, info: { Title: print.title } });
  draw(doc, print).catch((error: unknown) => doc.destroy(error instanceof Error ? error : new Error(String(error))));
  return doc;
}

async function draw(doc: PDFDocument, print: LabelPrint): Promise<void> {
  const pen = new LabelPen(doc);
  for (const _ of pen.open()) await nextTurn();
  const each = labelsOn(print.sheet);
  const { printer } = correctionFor(print.sheet, print.printer);
  const skipped = Math.min(Math.max(print.start - 1, 0), each - 1);
  let nth = skipped;
  for (const label of print.labels) {
    const place = nth % each;
    if (nth === skipped || place === 0) doc.addPage();
    nth += 1;
    drawLabel(doc, pen, label, drawnAt(print.sheet, place, printer), print);
    await nextTurn();
    // Whoever asked for it has gone.
    if (doc.destroyed) return;
  }
  if (nth === skipped) doc.addPage();
  for (const _ of pen.close()) await nextTurn();
  doc.end();
}

function drawLabel(doc: PDFDocument, pen: LabelPen, label: PrintedLabel, at: Rectangle, { sheet, isWaterproof, hasLines }: LabelPrint): void {
  const { module, code, words } = layoutOf(sheet.label, label.qr?.modules ?? 0, isWaterproof);
  doc.save().translate(at.x * MM, at.y * MM).scale(at.width / sheet.label.width, at.height / sheet.label.height);
  if (hasLines) doc.lineWidth(0.4).rect(0, 0, sheet.label.width * MM, sheet.label.height * MM).stroke('#000');
  if (label.qr && module !== undefined && code) drawQr(doc, label.qr, code, module);
  for (const { text, isBold, size, y } of placedWords(label, { width: words.width * MM, height: words.height * MM }, pen.widthOf, isWaterproof)) {
    pen.write(text, isBold, size, words.x * MM, words.y * MM + y);
  }
  doc.restore();
}

/** Dark modules beside each other are one rectangle: fewer to draw, and no white hairs between them. */
function drawQr(doc: PDFDocument, { rows }: LabelQr, at: Rectangle, module: number): void {
  for (const [y, row] of rows.entries()) {
    for (let x = 0; x < row.length; x += 1) {
      let end = x;
      while (row[end]) end += 1;
      if (end > x) doc.rect((at.x + x * module) * MM, (at.y + y * module) * MM, (end - x) * module * MM, module * MM);
      x = end;
    }
  }
  doc.fill('#000');
}
