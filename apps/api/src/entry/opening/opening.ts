import type { Saying as Said } from '@sprigline/contract';
import type { OpenPages } from '../pages/open-pages.ts';
import { rootIdOf, saidInTheEnd, type StoredEntry } from '../stored-entry.ts';
import { goesOn, identified, mixed, splits } from './from-batches.ts';
import type { Opening, OpeningEntry } from './opened.ts';
import { received, restuck, stuck } from './sticking.ts';

/**
 * What the entry opens. What is there already must be of the same line and stage.
 *
 * @throws DomainError `ledger/stage-gone-back`, `batch/other-stage`, `batch/other-sticking`,
 *   `batch/there-already`, `batch/taxon-needed`, `batch/label-taken`
 */
export function openingOf(entry: StoredEntry, pages: OpenPages): Opening {
  const said = saidInTheEnd(entry);
  if (!said) return {};

  const observedOn = entry.said.kind === 'replaced' ? entry.said.instead.observedOn : entry.observedOn;
  return openingFor(said, { id: rootIdOf(entry), observedOn, pages });
}

function openingFor(said: Said, entry: OpeningEntry): Opening {
  switch (said.kind) {
    case 'stuck':
      return stuck(said, entry);
    case 'received':
      return received(said, entry);
    case 'restuck':
      return restuck(said, entry);
    case 'lifted':
    case 'potted':
    case 'planted':
      return goesOn(said, entry);
    case 'moved':
      return said.toBatchId === undefined ? {} : splits({ ...said, toBatchId: said.toBatchId }, entry);
    case 'givenOut':
      return said.toBatchId === undefined || said.placeId === undefined
        ? {}
        : splits({ ...said, toBatchId: said.toBatchId, placeId: said.placeId }, entry);
    case 'mixed':
      return mixed(said, entry);
    case 'identified':
      return identified(said, entry);
    default:
      return {};
  }
}
