import { useMessages } from 'next-intl';
import type { Choice } from '../../ui/form/choice-field.tsx';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { ProseField } from '../../ui/form/prose-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import type { Job } from './jobs.ts';

/** What all lines of a job have in common. */
export function CommonFields({ job, places, label }: { job: Job; places: readonly Choice[]; label: string | undefined }) {
  const { hints } = useMessages().bench;
  return (
    <>
      <ChoiceField name="placeId" choices={places} isOptional={job === 'potting'} />
      {job === 'mixing' && <TextField name="label" isOptional value={label} />}
      {(job === 'potting' || job === 'mixing') && (
        <div className="grid w-full max-w-prose gap-4 sm:grid-cols-2">
          <TextField name="container" isOptional />
          <TextField name="medium" isOptional />
        </div>
      )}
      {job === 'planting' && <ProseField name="labels" rows={3} hint={hints.labels} />}
      {job === 'planting' && <ProseField name="positions" rows={3} isOptional hint={hints.positions} />}
    </>
  );
}
