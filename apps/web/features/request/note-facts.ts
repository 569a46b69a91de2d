import type { DespatchNote } from '@sprigline/contract';
import type { Messages } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';

/** The head of a despatch note, term by term. */
export function noteFacts(note: DespatchNote, { requests: said, words }: Pick<Messages, 'requests' | 'words'>, sums: { readonly went: string; readonly asked: string }): { term: string; says: string }[] {
  const species = note.commonName === null ? note.taxon : `${note.commonName} (${note.taxon})`;
  return [
    { term: said.noteTo, says: note.to },
    ...(note.place === null ? [] : [{ term: said.notePlace, says: note.place }]),
    { term: said.noteDay, says: sayDay(note.goneOn, 'long') },
    { term: said.fields.taxonId, says: `${species}, ${words.stage[note.stage]}` },
    { term: said.plants, says: note.plants === note.asked ? sums.went : `${sums.went}; ${sums.asked}` },
  ];
}
