'use client';

import { useTranslations } from 'next-intl';
import { useEffect, useState } from 'react';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { type KeptRound, keptRounds } from '../../lib/round-drafts.ts';
import { Way } from '../../ui/way.tsx';

interface RoundUnderWayProps {
  readonly programme: string;
  readonly personId: string;
  readonly names: Readonly<Record<string, string>>;
}

/** The rounds begun on this phone: nobody but it knows of them until they are sent. */
export function RoundUnderWay({ programme, personId, names }: RoundUnderWayProps) {
  const t = useTranslations('home');
  const [rounds, setRounds] = useState<readonly KeptRound[]>([]);
  useEffect(() => {
    try {
      setRounds(keptRounds(window.localStorage, programme, personId));
    } catch {
      // Storage is switched off: then nothing is kept here either.
    }
  }, [programme, personId]);

  if (rounds.length === 0) return null;
  return (
    <ul className="mb-8 grid gap-3" aria-label={t('underWay')}>
      {rounds.map(({ placeId, answered, day }) => (
        <li key={placeId}>
          <Way href={pageOf(programme, 'places', placeId, 'round')} className="walk-card border-juniper">
            <span>
              <span className="block text-lg font-semibold">{t('goOnWith', { place: names[placeId] ?? '' })}</span>
              <span className="text-sm text-ink-soft">{t('keptHere', { n: answered, day: sayDay(day) })}</span>
            </span>
          </Way>
        </li>
      ))}
    </ul>
  );
}
