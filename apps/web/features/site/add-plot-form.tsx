import { useMessages } from 'next-intl';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { addPlot } from './add-plot.action.ts';

/** @param plotId made with the page: pressing twice adds one plot */
export function AddPlotForm({ programme, siteId, plotId, plots }: { programme: string; siteId: string; plotId: string; plots: number }) {
  const said = useMessages().sites;
  return (
    <ActionForm action={addPlot.bind(null, programme, siteId)} labels={{ name: said.fields.plotName, note: said.fields.note }} send={said.addPlot}>
      <input type="hidden" name="id" value={plotId} />
      <input type="hidden" name="walkOrder" value={plots} />
      <TextField name="name" hint={said.hints.plotName} />
      <TextField name="note" isOptional />
    </ActionForm>
  );
}
