import type { Partner, Site } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { choicesFrom, choicesOf } from '../../ui/form/choices.ts';
import { ProseField } from '../../ui/form/prose-field.tsx';
import { RadioField } from '../../ui/form/radio-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

export function SiteFields({ site, partners }: { site?: Site; partners: readonly Partner[] }) {
  const { hints, degrees } = useMessages().sites;
  return (
    <>
      <TextField name="name" value={site?.name} />
      <TextField name="land" isOptional value={site?.land} hint={hints.land} />
      {partners.length > 0 && <ChoiceField name="partnerId" isOptional value={site?.partnerId} choices={choicesOf(partners)} />}
      <TextField name="cell/latitude" isOptional value={site?.cell?.latitude} hint={hints.cell} />
      <TextField name="cell/longitude" isOptional value={site?.cell?.longitude} />
      <RadioField name="cell/degrees" value={site?.cell?.degrees ?? '0.01'} choices={[...choicesFrom(degrees)].map(({ value, words }) => ({ value: value.replace('_', '.'), words }))} />
      <ProseField name="note" isOptional value={site?.note} />
      <input type="hidden" name="walkOrder" value={site?.walkOrder ?? 0} />
    </>
  );
}
