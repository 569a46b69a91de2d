import type { Partner, Permission, PlantRequest, Stand, Taxon } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import type { Choice } from '../../ui/form/choice-field.tsx';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { choicesFrom, choicesOf } from '../../ui/form/choices.ts';
import { DateField } from '../../ui/form/date-field.tsx';
import { DayField } from '../../ui/form/day-field.tsx';
import { ProseField } from '../../ui/form/prose-field.tsx';
import { RadioField } from '../../ui/form/radio-field.tsx';
import { SeveralField } from '../../ui/form/several-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

export interface RequestChoices {
  readonly partners: readonly Partner[];
  readonly taxa: readonly Taxon[];
  readonly stands: readonly Stand[];
  readonly sites: readonly Choice[];
  /** Empty for those who may not see them. */
  readonly permissions: readonly Permission[];
  readonly today: string;
}

export function RequestFields({ request, partners, taxa, stands, sites, permissions, today }: RequestChoices & { request?: PlantRequest }) {
  const { requests: { hints }, words } = useMessages();
  const { planted: _, ...stages } = words.stage;
  return (
    <>
      <TextField name="outside" isOptional value={request?.outside} hint={hints.outside} />
      {partners.length > 0 && <ChoiceField name="partnerId" isOptional value={request?.partnerId} choices={choicesOf(partners)} hint={hints.partnerId} />}
      <ChoiceField name="taxonId" value={request?.taxonId ?? (taxa.length === 1 ? taxa[0]?.id : undefined)} choices={taxa.map(({ id, commonName, scientificName }) => ({ value: id, words: commonName ?? scientificName }))} />
      <RadioField name="stage" value={request?.stage ?? 'potted'} choices={choicesFrom(stages)} />
      <TextField name="plants" keypad="numeric" value={request?.plants} />
      <TextField name="mostPerDonor" keypad="numeric" isOptional value={request?.mostPerDonor} hint={hints.mostPerDonor} />
      <SeveralField name="standIds" isOptional values={request?.standIds ?? []} choices={choicesOf(stands)} hint={hints.standIds} />
      <DayField name="askedOn" today={today} value={request?.askedOn} />
      <DateField name="wantedOn" isOptional value={request?.wantedOn} />
      <ChoiceField name="placeId" isOptional value={request?.placeId} choices={sites} hint={hints.placeId} />
      {permissions.length > 0 && <ChoiceField name="permissionId" isOptional value={request?.permissionId} choices={permissions.map(({ id, land, grantedBy }) => ({ value: id, words: `${land} (${grantedBy})` }))} hint={hints.permissionId} />}
      {permissions.length === 0 && request?.permissionId && <input type="hidden" name="permissionId" value={request.permissionId} />}
      <ProseField name="note" isOptional value={request?.note} />
    </>
  );
}
