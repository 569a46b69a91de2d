import { useMessages } from 'next-intl';
import { SAYING } from '../../lib/entry-said.ts';
import type { Choice } from '../../ui/form/choice-field.tsx';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

/** What is held, one of several kinds of things, and why. Without choices: a release, which knows what it is about. */
export function HoldFields({ choices }: { choices?: { readonly places: readonly Choice[]; readonly trees: readonly Choice[]; readonly trips: readonly Choice[] } }) {
  const { hints } = useMessages().holds;
  return (
    <>
      {choices && (
        <>
          <TextField name={`${SAYING}label`} isOptional />
          <ChoiceField name={`${SAYING}placeId`} isOptional choices={choices.places} />
          <ChoiceField name={`${SAYING}donorTreeId`} isOptional choices={choices.trees} />
          <ChoiceField name={`${SAYING}tripId`} isOptional choices={choices.trips} />
          <TextField name={`${SAYING}mediumLot`} isOptional hint={hints.mediumLot} />
        </>
      )}
      <TextField name={`${SAYING}reason`} />
      <TextField name={`${SAYING}sample`} isOptional />
      <TextField name={`${SAYING}result`} isOptional />
    </>
  );
}
