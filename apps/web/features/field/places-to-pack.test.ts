import type { Pack } from '@sprigline/contract';
import { expect, test } from 'vitest';
import { placesToPack } from './places-to-pack.ts';

const place = (id: string, kind: Pack['places'][number]['kind'], parentId: string | null, batches = 0) => ({ id, name: id, kind, parentId, batches });

test('a place counts what lies in it; trays go with their bench, and what is empty is not offered', () => {
  const places = [place('house', 'house', null), place('bench', 'bench', 'house', 1), place('T1', 'tray', 'bench', 2), place('T2', 'tray', 'bench', 3), place('bare', 'bench', 'house'), place('site', 'site', null), place('plot', 'plot', 'site', 4)];
  expect(placesToPack(places)).toEqual([
    { id: 'house', name: 'house', depth: 0, batches: 6 },
    { id: 'bench', name: 'bench', depth: 1, batches: 6 },
    { id: 'site', name: 'site', depth: 0, batches: 4 },
    { id: 'plot', name: 'plot', depth: 1, batches: 4 },
  ]);
});
