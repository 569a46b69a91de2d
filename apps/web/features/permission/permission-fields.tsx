import type { Permission, Stand, Taxon } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { Caution } from '../../ui/caution.tsx';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { choicesOf } from '../../ui/form/choices.ts';
import { DateField } from '../../ui/form/date-field.tsx';
import { DayField } from '../../ui/form/day-field.tsx';
import { ProseField } from '../../ui/form/prose-field.tsx';
import { SeveralField } from '../../ui/form/several-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

interface PermissionFieldsProps {
  readonly permission?: Permission;
  readonly stands: readonly Stand[];
  readonly taxa: readonly Taxon[];
  readonly today: string;
}

export function PermissionFields({ permission, stands, taxa, today }: PermissionFieldsProps) {
  const { hints, caution } = useMessages().permissions;
  return (
    <>
      <TextField name="grantedBy" value={permission?.grantedBy} hint={hints.grantedBy} />
      <TextField name="land" value={permission?.land} hint={hints.land} />
      <ChoiceField name="standId" isOptional value={permission?.standId} choices={choicesOf(stands)} />
      <SeveralField name="taxonIds" isOptional values={permission?.taxonIds ?? []} hint={hints.taxonIds} choices={taxa.map(({ id, commonName, scientificName }) => ({ value: id, words: commonName ?? scientificName }))} />
      <TextField name="quota" keypad="numeric" isOptional value={permission?.quota} hint={hints.quota} />
      <DayField name="validFrom" today={today} value={permission?.validFrom} isOpen />
      <DateField name="validUntil" isOptional value={permission?.validUntil} />
      <ProseField name="terms" isOptional value={permission?.terms} />
      <TextField name="document" isOptional value={permission?.document} hint={hints.document} />
      <TextField name="plantsOwedBack" keypad="numeric" value={permission?.plantsOwedBack ?? 0} hint={hints.plantsOwedBack} />
      <Caution>{caution}</Caution>
    </>
  );
}
