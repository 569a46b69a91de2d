import { useTranslations } from 'next-intl';
import { useEffect, useState } from 'react';
import { chooseAuthor } from '../../lib/phone/choose-author.ts';
import { authorHere } from '../../lib/phone/device.ts';
import type { Author } from '../../lib/phone/outbox-item.ts';
import { peopleWithCodes } from '../../lib/phone/own-code.ts';
import { packOf } from '../../lib/phone/packing.ts';
import { theStore } from '../../lib/phone/store.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { AskCode } from './ask-code.tsx';

interface WhoListProps {
  readonly programme: string;
  /** Somebody was chosen, and has told their code where they have one. */
  readonly done: () => void;
}

interface Here {
  readonly people: readonly Author[];
  readonly author: Author;
  readonly withCode: ReadonlySet<string>;
}

/** The people of the pack: one tap, and what is logged from then on is theirs. */
export function WhoList({ programme, done }: WhoListProps) {
  const t = useTranslations('whoLogs');
  const here = useHere(programme);
  const [asked, ask] = useState<Author>();
  if (!here) return null;
  const { people, author, withCode } = here;

  async function choose(person: Author): Promise<void> {
    const store = await theStore();
    // The same person goes on where they were.
    if (person.personId !== (await authorHere(store, programme)).personId) await chooseAuthor(store, programme, person);
    done();
  }

  if (asked) return <AskCode key={asked.personId} person={asked} right={() => void choose(asked)} leave={() => ask(undefined)} />;
  return (
    <ul className="grid gap-2 sm:grid-cols-2">
      {people.map((person) => (
        <li key={person.personId}>
          <button type="button" onClick={() => (withCode.has(person.personId) ? ask(person) : void choose(person))} aria-pressed={person.personId === author.personId} className={`${buttonClass(person.personId === author.personId ? 'main' : 'quiet')} w-full`}>
            {person.personId === author.personId && <span aria-hidden>✓</span>} {person.name} {withCode.has(person.personId) && <span className="text-sm font-normal">{t('hasCode')}</span>}
          </button>
        </li>
      ))}
    </ul>
  );
}

function useHere(programme: string): Here | undefined {
  const [here, setHere] = useState<Here>();
  useEffect(() => {
    const look = async (): Promise<Here | undefined> => {
      const store = await theStore();
      const pack = await packOf(store, programme);
      if (!pack) return undefined;
      const [author, withCode] = await Promise.all([authorHere(store, programme), peopleWithCodes(store)]);
      return { people: pack.people.map(({ id, name }) => ({ personId: id, name })), author, withCode };
    };
    look().then(setHere, () => undefined);
  }, [programme]);
  return here;
}
