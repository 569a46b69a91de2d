import { createElement } from 'react';
import { expect, test } from 'vitest';
import { pdfText } from '../../../../test/support/pdf-text.ts';
import { PaperSheet } from './paper-sheet.tsx';
import { PaperTable, TickBox, WriteBox } from './paper-table.tsx';
import { pdfAnswer } from './pdf-answer.ts';

test('a long list is a PDF of several pages, whose name any computer bears', async () => {
  const rows = Array.from({ length: 90 }, (_, n) => ({ label: `J${n}`, donor: 'CR-04', place: 'Żółty bench' }));
  const sheet = createElement(PaperSheet, {
    paper: 'LETTER', language: 'en', title: 'Potting up', more: 'Harrowdale, House A', foot: 'As of 27 Nov 2026', pageOf: (page, pages) => `page ${page} of ${pages}`, qrTo: 'http://localhost:3000/programmes/harrowdale/lists/potting',
    children: createElement(PaperTable<(typeof rows)[number]>, {
      rows, keyOf: ({ label }) => label,
      columns: [
        { head: 'Batch', share: 2, cell: ({ label }) => label }, { head: 'Donor tree', share: 2, cell: ({ donor }) => donor }, { head: 'Place', share: 4, cell: ({ place }) => place },
        { head: 'Potted', share: 2, cell: () => createElement(WriteBox) }, { head: 'Done', share: 1, cell: () => createElement(TickBox) },
      ],
    }),
  });
  const answer = await pdfAnswer(sheet as never, 'Potting up, House A');
  expect(answer.headers.get('content-disposition')).toBe('inline; filename="potting-up-house-a.pdf"');
  const pdf = Buffer.from(await answer.arrayBuffer());
  expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
  expect(pdf.toString('latin1').match(/\/Type \/Page\b/g)?.length).toBeGreaterThan(3);
});

test('a letter can be found on later papers too, though it was drawn first as a part of another', async () => {
  const sheetOf = (title: string) => createElement(PaperSheet, { paper: 'A4', language: 'en', title, more: '', foot: '', pageOf: String, children: null });
  const said = [];
  for (const title of ['Colon: café', 'Full stop. Coffee.', 'Żółw', 'Zolw 3.417']) said.push(pdfText(Buffer.from(await (await pdfAnswer(sheetOf(title) as never, title)).arrayBuffer())));
  expect(said).toEqual(['Colon: café1', 'Full stop. Coffee.1', 'Żółw1', 'Zolw 3.4171']);
});
