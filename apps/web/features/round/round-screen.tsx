'use client';

import type { PackedBooks, Round, TapState } from '@sprigline/contract';
import { lazy, type ReactNode, Suspense } from 'react';
import { RoundBanner } from './round-banner.tsx';
import { StartView } from './start-view.tsx';
import type { Stop } from './stop.ts';
import { StopView } from './stop-view.tsx';
import { typingKey } from './typing.ts';
import { whenUsed } from '../../lib/when-used.ts';
import { useBooksHere } from '../../lib/phone/use-books-here.ts';
import { useRound } from './use-round.ts';

// None is where a walk begins.
const StopPhoto = whenUsed(() => import('./stop-photo.tsx').then((file) => file.StopPhoto));
const PlaceView = lazy(() => import('./place-view.tsx').then((view) => ({ default: view.PlaceView })));
const GridView = lazy(() => import('./grid-view.tsx').then((view) => ({ default: view.GridView })));
const ToldView = lazy(() => import('./told-view.tsx').then((view) => ({ default: view.ToldView })));

/** All that a round needs to know, from a pack: nothing is asked of anybody while walking. */
export interface RoundProps {
  readonly programme: string;
  readonly placeId: string;
  readonly placeName: string;
  /** Who logs here. */
  readonly personId: string;
  readonly me: string;
  readonly zone: string;
  readonly today: string;
  readonly stops: readonly Stop[];
  readonly taps: readonly TapState[];
  readonly noEntryBefore: Round['noEntryBefore'];
  readonly people: readonly { readonly id: string; readonly name: string }[];
  /** Workdays that the round may be part of, and the one that this phone remembers. */
  readonly workdays: { readonly choices: readonly { readonly value: string; readonly words: string }[]; readonly remembered: string | undefined };
  readonly books: readonly PackedBooks[];
  /** To begin with, such as one whose label was scanned; only on a walk of today. */
  readonly batchId?: string | undefined;
  /** Where one goes from here. */
  readonly homeHref: string;
  readonly scanHref: string;
  /** Where something is done to a batch besides counting it. */
  readonly actHref: (batchId: string) => string;
  /** Stands under the walk, before one begins. */
  readonly below: ReactNode;
}

/** Walking a place: first where and when, then batch after batch, each kept on the phone as soon as it is told. */
export function RoundScreen(props: RoundProps) {
  const walk = useRound(props);
  const booksOf = useBooksHere(props);
  const { state: { where }, state, step } = walk;
  const stop = typeof where === 'number' ? props.stops[where] : undefined;

  return (
    <div className={where === 'start' ? '' : 'on-round'}>
      <RoundBanner walk={walk} booksOf={booksOf} scanHref={props.batchId === undefined ? undefined : props.scanHref} stops={props.stops} />
      {where === 'start' && <StartView {...props} state={state} step={step} />}
      {/* Made anew for each batch, so that no number is carried over. */}
      {stop && typeof where === 'number' && <StopView key={stop.batchId} stop={stop} at={where} of={props.stops.length} zone={props.zone} walk={walk} leaveTo={props.homeHref} me={props.me} actHref={props.actHref(stop.batchId)} typingKey={typingKey(`${props.programme}/${props.placeId}/${props.personId}`, stop.batchId)} photo={<Suspense><StopPhoto key={stop.batchId} programme={props.programme} stop={stop} day={state.draft.day} personId={props.personId} /></Suspense>} />}
      <Suspense>
        {where === 'place' && <PlaceView {...props} walk={walk} />}
        {typeof where === 'object' && <GridView {...props} walk={walk} booksOf={booksOf} at={where.trayAt} />}
        {where === 'told' && <ToldView {...props} walk={walk} booksOf={booksOf} />}
      </Suspense>
    </div>
  );
}
