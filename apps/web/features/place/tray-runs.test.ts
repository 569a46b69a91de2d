import type { PlaceInTree } from '@sprigline/contract';
import { expect, test } from 'vitest';
import { inRuns } from './tray-runs.ts';

const place = (name: string, kind: PlaceInTree['kind'], parentId: string | null) => ({ name, kind, parentId }) as PlaceInTree;

test('trays of one bench come together, those of the next do not join them', () => {
  const places = [
    place('house', 'house', null), place('bench 1', 'bench', 'house'), place('tray 1', 'tray', 'bench 1'), place('tray 2', 'tray', 'bench 1'),
    place('tray 3', 'tray', 'bench 2'), place('shelf', 'bench', 'bench 2'), place('tray 4', 'tray', 'bench 2'), place('tray 5', 'tray', null),
  ];
  expect(inRuns(places).map((run) => run.map(({ name }) => name))).toEqual([['house'], ['bench 1'], ['tray 1', 'tray 2'], ['tray 3'], ['shelf'], ['tray 4'], ['tray 5']]);
  expect(inRuns([])).toEqual([]);
});
