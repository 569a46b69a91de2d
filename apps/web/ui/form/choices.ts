import type { Choice } from './choice-field.tsx';

/** Choices out of words by value, as message files hold them. */
export function choicesFrom(words: Readonly<Record<string, string>>): Choice[] {
  return Object.entries(words).map(([value, said]) => ({ value, words: said }));
}

/** Choices out of records: the id is sent, the name is shown. */
export function choicesOf(records: readonly { readonly id: string; readonly name: string }[]): Choice[] {
  return records.map(({ id, name }) => ({ value: id, words: name }));
}
