import { createElement } from 'react';
import { expect, test } from 'vitest';
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
