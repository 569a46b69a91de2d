import type { ReactElement } from 'react';
import { type DocumentProps, renderToBuffer } from '@react-pdf/renderer';
import { lettersAreKnown } from './fonts.ts';

/** A PDF as the answer to a request. `name` without ending; what file systems can't bear is left out. */
export async function pdfAnswer(document: ReactElement<DocumentProps>, name: string): Promise<Response> {
  await lettersAreKnown();
  const bytes = await renderToBuffer(document);
  return new Response(new Uint8Array(bytes), {
    headers: {
      'content-type': 'application/pdf',
      'content-disposition': `inline; filename="${name.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-').replaceAll(/^-+|-+$/g, '')}.pdf"`,
      'cache-control': 'no-store',
    },
  });
}
