'use client';

import { useTranslations } from 'next-intl';
import type { Round, TapState } from '@sprigline/contract';
import { pageOf } from '../../lib/page-address.ts';
import { PlaceView } from './place-view.tsx';
import { StartView } from './start-view.tsx';
import type { Stop } from './stop.ts';
import { StopView } from './stop-view.tsx';
import { SumsView } from './sums-view.tsx';
import { useRound, type WhoAndWhere } from './use-round.ts';

export interface RoundProps extends WhoAndWhere {
  readonly placeName: string;
  readonly zone: string;
  readonly stops: readonly Stop[];
  readonly taps: readonly TapState[];
  readonly noEntryBefore: Round['noEntryBefore'];
  readonly me: string;
  readonly people: readonly { readonly id: string; readonly name: string }[];
  /** Workdays that the round may be part of, and the one that this phone remembers. */
  readonly workdays: { readonly choices: readonly { readonly value: string; readonly words: string }[]; readonly remembered: string | undefined };
}

/** Walking a place: first where and when, then batch after batch, then what the books make of it. */
export function RoundScreen(props: RoundProps) {
  const { state, step, isKept } = useRound(props);
  const t = useTranslations('round');
  const { where } = state;
  const stop = typeof where === 'number' ? props.stops[where] : undefined;

  return (
    <div className={where === 'start' ? '' : 'on-round'}>
      {!isKept && <p role="alert" className="mb-3 rounded-md border-2 border-rust bg-rust-wash p-3 font-semibold text-rust">{t('notKept')}</p>}
      {where === 'start' && <StartView {...props} state={state} step={step} />}
      {where === 'place' && <PlaceView {...props} state={state} step={step} />}
      {/* Made anew for each batch, so that no number is carried over. */}
      {stop && typeof where === 'number' && <StopView key={stop.batchId} stop={stop} at={where} of={props.stops.length} zone={props.zone} state={state} step={step} leaveTo={pageOf(props.programme, 'places', props.placeId)} />}
      {where === 'sums' && <SumsView {...props} state={state} step={step} />}
    </div>
  );
}
