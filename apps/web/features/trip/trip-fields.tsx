import type { Permission, Person, Stand, Trip } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { Caution } from '../../ui/caution.tsx';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { choicesOf } from '../../ui/form/choices.ts';
import { DayField } from '../../ui/form/day-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

interface TripFieldsProps {
  readonly trip?: Trip;
  readonly stands: readonly Stand[];
  readonly people: readonly Person[];
  /** Empty for those who may not see them. */
  readonly permissions: readonly Permission[];
  readonly today: string;
}

export function TripFields({ trip, stands, people, permissions, today }: TripFieldsProps) {
  const { hints, caution } = useMessages().trips;
  const t = useTranslations('trips.leave');
  const wordsOf = ({ land, grantedBy, used, quota, validUntil }: Permission): string => [
    `${land} (${grantedBy})`,
    quota === null ? t('usedFreely', { used }) : t('usedOf', { used, quota }),
    ...(validUntil === null ? [] : [validUntil < today ? t('ended', { day: sayDay(validUntil) }) : t('until', { day: sayDay(validUntil) })]),
  ].join(', ');
  return (
    <>
      <DayField name="wentOn" today={today} value={trip?.wentOn} />
      <ChoiceField name="standId" value={trip?.standId} choices={choicesOf(stands)} />
      {permissions.length > 0 && (
        <ChoiceField name="permissionId" isOptional value={trip?.permissionId} hint={hints.permissionId} choices={permissions.map((permission) => ({ value: permission.id, words: wordsOf(permission) }))} />
      )}
      {permissions.length === 0 && trip?.permissionId && <input type="hidden" name="permissionId" value={trip.permissionId} />}
      <ChoiceField name="ledBy" isOptional value={trip?.ledBy} choices={choicesOf(people)} />
      <TextField name="people" keypad="numeric" isOptional value={trip?.people} hint={hints.people} />
      <Caution>{caution}</Caution>
    </>
  );
}
