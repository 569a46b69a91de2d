import { Readable } from 'node:stream';

/** A PDF that is still being drawn as the answer to a request. `name` without ending, in letters that any file system bears. */
export function pdfStream(pdf: Readable, name: string): Response {
  return new Response(Readable.toWeb(pdf) as ReadableStream<Uint8Array>, {
    headers: { 'content-type': 'application/pdf', 'content-disposition': `inline; filename="${name}.pdf"`, 'cache-control': 'no-store' },
  });
}
