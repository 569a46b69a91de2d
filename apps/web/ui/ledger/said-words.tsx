import { Saying } from '@sprigline/contract';
import { useSayingWords } from './saying-words.tsx';

/**
 * The same of what the API answers: nothing of what it does not know.
 *
 * @param nameOf what a batch or a place is called, by its id; nothing where it is not known
 */
export function useSaidWords(nameOf: (id: string) => string | undefined): (said: unknown) => string {
  const say = useSayingWords(nameOf);
  return (raw) => {
    const said = Saying.safeParse(raw);
    return said.success ? say(said.data) : '';
  };
}
