import type { PlantRequest, Supply } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { newId } from '../../lib/new-id.ts';
import type { WorkdayChoices } from '../../lib/workday-choices.ts';
import type { Choice } from '../../ui/form/choice-field.tsx';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { DayField } from '../../ui/form/day-field.tsx';
import { HiddenField } from '../../ui/form/hidden-field.tsx';
import { ProseField } from '../../ui/form/prose-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { DespatchConfirm } from './despatch-confirm.tsx';
import { SupplyFields } from './supply-fields.tsx';

interface DespatchFieldsProps {
  readonly request: PlantRequest;
  readonly supplies: readonly Supply[];
  readonly today: string;
  /** Where the partner keeps plants. */
  readonly places: readonly Choice[];
  readonly workdays: WorkdayChoices;
  /** Labels that are likely to be free, one a line. */
  readonly labels: readonly string[];
}

export function DespatchFields({ request, supplies, today, places, workdays, labels }: DespatchFieldsProps) {
  const said = useMessages().requests;
  const t = useTranslations('requests');
  const staysInTheBooks = request.partnerId !== null || request.placeId !== null;
  return (
    <>
      <DespatchConfirm words={said.confirmLabel} />
      <DayField name="observedOn" today={today} />
      {request.partnerId !== null && request.placeId === null && <ChoiceField name="placeId" choices={places} hint={said.despatchPlaceHint} value={places.length === 1 ? places[0]?.value : undefined} />}
      <SupplyFields supplies={supplies} startOf={({ covered }) => covered} saysOf={({ reserved, balance }) => t('lineAside', { n: reserved, there: balance })} />
      {supplies.map(({ batchId }) => (
        <span key={batchId} className="hidden">
          <HiddenField name={`entry/${batchId}`} value={newId()} />
          <HiddenField name={`to/${batchId}`} value={newId()} />
        </span>
      ))}
      {staysInTheBooks && <div className="grid w-full max-w-3xl gap-4 sm:grid-cols-2">{supplies.map(({ batchId }, at) => <TextField key={batchId} name={`label/${batchId}`} isOptional value={labels[at]} />)}</div>}
      {workdays.choices.length > 0 && <ChoiceField name="workdayId" isOptional choices={workdays.choices} value={workdays.remembered} />}
      <ProseField name="note" isOptional rows={2} />
    </>
  );
}
