import type { Readable } from 'node:stream';
import PDFDocument from 'pdfkit';
import { LabelPen, MM } from './label-pen.ts';
import { CROSS, RULERS } from './printer.ts';

interface PageToMeasure {
  readonly paper: { readonly width: number; readonly height: number };
  readonly title: string;
  readonly language: string;
  readonly lead: string;
  /** What to measure, in the order of the form. */
  readonly lengths: readonly string[];
}

const THIN = 0.15;
const CROSS_ARM = 15;
/** The rulers begin here, clear of the cross. */
const BEGIN = { across: { x: 60, y: 30 }, down: { x: 20, y: 70 } };

/** A page that says how a printer misses: a cross, a line across and a line down, each with its letter. */
export function printerPdf({ paper, title, language, lead, lengths }: PageToMeasure): Readable {
  const doc = new PDFDocument({ size: [paper.width * MM, paper.height * MM], margin: 0, autoFirstPage: true, lang: language, displayTitle: true, info: { Title: title } });
  const pen = new LabelPen(doc);
  const line = (x1: number, y1: number, x2: number, y2: number) => doc.lineWidth(THIN * MM).moveTo(x1 * MM, y1 * MM).lineTo(x2 * MM, y2 * MM).stroke('#000');
  const write = (words: string, isBold: boolean, size: number, x: number, y: number) => pen.write(words, isBold, size, x * MM, y * MM);

  line(CROSS.x - CROSS_ARM, CROSS.y, CROSS.x + CROSS_ARM, CROSS.y);
  line(CROSS.x, CROSS.y - CROSS_ARM, CROSS.x, CROSS.y + CROSS_ARM);
  write('A', true, 11, CROSS.x - CROSS_ARM - 5, CROSS.y - 2);
  write('B', true, 11, CROSS.x - 1.3, CROSS.y - CROSS_ARM - 5.5);

  const { across, down } = BEGIN;
  line(across.x, across.y, across.x + RULERS.across, across.y);
  line(down.x, down.y, down.x, down.y + RULERS.down);
  for (let mm = 0; mm <= RULERS.across; mm += 10) line(across.x + mm, across.y, across.x + mm, across.y + tick(mm, RULERS.across));
  for (let mm = 0; mm <= RULERS.down; mm += 10) line(down.x, down.y + mm, down.x + tick(mm, RULERS.down), down.y + mm);
  write('C', true, 11, across.x + RULERS.across / 2, across.y - 6);
  write('D', true, 11, down.x - 6, down.y + RULERS.down / 2 - 2);

  write(title, true, 16, across.x, 70);
  write(lead, false, 10, across.x, 80);
  for (const [at, length] of lengths.entries()) write(`${length}   ______`, false, 10, across.x, 92 + at * 10);
  doc.end();
  return doc;
}

/** The ends are what is measured, so they are longer. */
const tick = (mm: number, end: number): number => (mm === 0 || mm === end ? 8 : 3);
