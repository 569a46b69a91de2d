import type { SheetGuess } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { TickField } from '../../ui/form/tick-field.tsx';
import { Part } from './part.tsx';

/** Spellings offered for joining; those apart by spaces and capitals only are ticked already. */
export function SpellingTicks({ guess }: { guess: SheetGuess }) {
  const { imports: said } = useMessages();
  const fields = Object.entries(guess.spellings).filter(([, groups]) => groups.length > 0);
  if (fields.length === 0) return null;
  return (
    <Part heading={said.one.spellings} lead={said.one.spellingsLead}>
      {fields.flatMap(([field, groups]) =>
        groups.map(({ keep, sameApartFromCase }, index) => (
          <TickField key={`${field}/${keep}`} name={`spellings/${field}/${index}`} isTicked={sameApartFromCase} hint={said.plan[field as 'stand']} />
        )),
      )}
    </Part>
  );
}
