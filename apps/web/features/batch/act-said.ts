import { deadSaid, SAYING } from '../../lib/entry-said.ts';
import { isTicked, number, text } from '../../lib/form-values.ts';
import { type Act, GOES_ON } from './acts.ts';
import { DEAD_LINES } from './dead-lines.tsx';

/** What a form says of a batch, as the API wants it. */
export function actSaid(act: Act, batchId: string, form: FormData): object {
  const num = (name: string) => number(form, `${SAYING}${name}`);
  const words = (name: string) => text(form, `${SAYING}${name}`);
  const n = num('n');
  switch (act) {
    case 'count':
      return { kind: 'counted', batchId, alive: num('alive'), look: words('look'), rooted: num('rooted'), callused: num('callused'), dead: deadSaid(form, DEAD_LINES) };
    case 'check':
      return { kind: 'checked', batchId, alive: num('alive'), dead: deadSaid(form, DEAD_LINES), notFound: num('notFound') ?? 0, notLooked: num('notLooked') ?? 0 };
    case 'died':
      return { kind: 'died', batchId, n, cause: words('cause') };
    case 'throw-out':
      return { kind: 'thrownOut', batchId, n, reason: words('reason') };
    case 'call':
      return { kind: 'called', batchId, n };
    case 'find':
      return { kind: 'found', batchId, n, reason: words('reason') };
    case 'note':
      return { kind: 'noted', batchId, text: words('text') };
    case 'lift': case 'pot': case 'plant':
      return { kind: GOES_ON[act], batchId, n, toBatchId: words('toBatchId'), placeId: words('placeId'), label: words('label'), container: words('container'), medium: words('medium'), ...(isTicked(form, `${SAYING}leavesNone`) ? { leavesNone: true } : {}) };
    case 'restick':
      return { kind: 'restuck', batchId, n, toBatchId: words('toBatchId'), stickingId: words('stickingId'), placeId: words('placeId'), recipeVersionId: words('recipeVersionId'), rows: words('rows'), label: words('label'), medium: words('medium') };
    case 'identify':
      return { kind: 'identified', batchId, n, stickingId: words('stickingId'), toBatchId: words('toBatchId'), placeId: words('placeId'), label: words('label') };
    case 'hold': case 'release':
      return { kind: act === 'hold' ? 'held' : 'released', batchId, reason: words('reason'), sample: words('sample'), result: words('result') };
    case 'move':
      return n === undefined
        ? { kind: 'moved', batchId, placeId: words('placeId'), container: words('container'), medium: words('medium') }
        : { kind: 'moved', batchId, n, rooted: num('rooted'), toBatchId: words('toBatchId'), placeId: words('placeId'), label: words('label'), container: words('container'), medium: words('medium') };
    case 'join':
      return joined(batchId, n, words('toBatchId'));
    case 'give':
      return words('partnerId') === undefined
        ? { kind: 'givenOut', batchId, n, outside: words('outside') }
        : { kind: 'givenOut', batchId, n, partnerId: words('partnerId'), toBatchId: words('toBatchId'), placeId: words('placeId'), label: words('label') };
  }
}

/** The batch that is joined and where it stands come as one choice. */
function joined(batchId: string, n: ReturnType<typeof number>, choice: string | undefined): object {
  const [toBatchId, placeId] = (choice ?? '').split('@');
  return { kind: 'moved', batchId, n, toBatchId, placeId };
}
