'use client';

import { FieldApp } from '../../features/field/field-app.tsx';
import { OutboxLine } from '../../features/outbox/outbox-line.tsx';
import { OutboxScreen } from '../../features/outbox/outbox-screen.tsx';
import { PackedRound } from '../../features/round/packed-round.tsx';
import { fieldAddress } from '../../lib/field-address.ts';

/** The routes of what works without a signal. */
export function FieldScreens() {
  return (
    <FieldApp
      line={<OutboxLine />}
      screens={(route) =>
        route.screen === 'outbox' ? <OutboxScreen /> : <PackedRound key={route.id} programme={route.programme} kind={route.screen === 'list' ? 'work-lists' : 'places'} id={route.id} homeHref={fieldAddress(route.programme)} />
      }
    />
  );
}
