import type { ToKeep } from '../../apps/web/lib/phone/outbox-item.ts';

/** A count as a device keeps it, for tests. */
export const counted = (id: string, alive = 20, batchId = 'tray'): ToKeep => ({
  id, programme: 'harrowdale', author: { personId: 'ann', name: 'Ann' }, about: 'JC-1',
  work: { kind: 'entry', entry: { id, observedOn: '2026-03-01', writtenAt: '2026-03-01T10:00:00Z', saying: { kind: 'counted', batchId, alive, look: 'look' } } },
});
