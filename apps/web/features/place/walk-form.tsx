import type { PlaceInTree } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { orderPlaces } from './order-places.action.ts';

/** A number for each of the places that lie side by side. */
export function WalkForm({ programme, parentId, places }: { programme: string; parentId: string | null; places: readonly PlaceInTree[] }) {
  const said = useMessages().places;
  return (
    <ActionForm action={orderPlaces.bind(null, programme, parentId, places.map(({ id }) => id))} labels={Object.fromEntries(places.map(({ id, name }) => [id, name]))} send={said.walkSend}>
      {places.map(({ id }, at) => <TextField key={id} name={id} keypad="decimal" value={at + 1} />)}
    </ActionForm>
  );
}
