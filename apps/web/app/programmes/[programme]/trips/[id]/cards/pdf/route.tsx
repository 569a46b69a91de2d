import { DonorTree, Trip } from '@sprigline/contract';
import { z } from 'zod';
import { read } from '../../../../../../../lib/read.ts';
import { apiOf } from '../../../../../../../lib/workplace.ts';
import { paperOf } from '../../../../../../../ui/paper/paper-size.ts';
import { PaperSheet } from '../../../../../../../ui/paper/paper-sheet.tsx';
import { PaperTable, WriteBox } from '../../../../../../../ui/paper/paper-table.tsx';
import { pdfAnswer } from '../../../../../../../ui/paper/pdf-answer.ts';

export async function GET(request: Request, { params }: { params: Promise<{ programme: string; id: string }> }): Promise<Response> {
  const { programme, id } = await params;
  const trip = await read(apiOf(programme, 'trips', id), Trip);
  const trees = await read(`${apiOf(programme, 'donor-trees')}?standId=${trip.standId}&limit=200`, z.array(DonorTree));
  const rows = trip.bundles.map((bundle) => ({ ...bundle, label: trees.find((tree) => tree.id === bundle.donorTreeId)?.label ?? '' }));
  return pdfAnswer(
    <PaperSheet paper={paperOf(new URL(request.url).searchParams)} language="en" title="Bundles" more={trip.wentOn} foot="Sprigline" pageOf={(page, pages) => `${page}/${pages}`} qrTo={request.url}>
      <PaperTable rows={rows} keyOf={({ id: key }) => key} columns={[
        { head: 'Donor tree', share: 3, cell: ({ label }) => label }, { head: 'Cuttings', share: 2, isNumber: true, cell: ({ cuttings }) => cuttings }, { head: 'Stuck', share: 2, cell: () => <WriteBox /> },
      ]} />
    </PaperSheet>, 'bundles');
}
