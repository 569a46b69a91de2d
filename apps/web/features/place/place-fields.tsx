import type { Partner, Place, PlaceInTree } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { choicesOf } from '../../ui/form/choices.ts';
import { DateField } from '../../ui/form/date-field.tsx';
import { ProseField } from '../../ui/form/prose-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

/** What can be said of a place at any time. */
export function PlaceFields({ place, partners }: { place?: Place; partners: readonly Partner[] }) {
  const { hints } = useMessages().places;
  const isTray = place?.kind === 'tray';
  return (
    <>
      <TextField name="name" value={place?.name} hint={hints.name} />
      <TextField name="walkOrder" keypad="numeric" isOptional value={place?.walkOrder} hint={hints.walkOrder} />
      <TextField name="roundEveryDays" keypad="numeric" isOptional value={place?.roundEveryDays} hint={hints.roundEveryDays} />
      {isTray && <TextField name="rows" keypad="numeric" isOptional value={place?.rows} hint={hints.rows} />}
      {partners.length > 0 && <ChoiceField name="partnerId" isOptional value={place?.partnerId} choices={choicesOf(partners)} />}
      <ProseField name="note" isOptional value={place?.note} />
      {place && <DateField name="closedOn" isOptional value={place.closedOn} hint={hints.closedOn} />}
    </>
  );
}

/** Where plants and trays may stand; trees stand at sites, which have pages of their own. */
export const mayHold = ({ kind }: PlaceInTree): boolean => kind === 'house' || kind === 'frame' || kind === 'ground' || kind === 'bench';
