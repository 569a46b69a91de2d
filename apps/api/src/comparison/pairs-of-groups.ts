import type { ComparedPair } from '@sprigline/contract';
import { type ArmDifference, type ArmRow, type ArmsCompared, compareArms, holm, type Nuisance } from '@sprigline/domain';
import type { ComparedRow } from './comparison.queries.ts';
import type { WorkedGroup } from './groups-of-rows.ts';

/** Below this a chance counts as telling, for all pairs at once. A convention. */
const LEVEL = 0.05;

/** Each other group with the one that they are compared with, and the chances corrected for asking so often. */
export function pairsOf(groups: readonly WorkedGroup[], against: WorkedGroup | undefined, asked: readonly Nuisance[]): ComparedPair[] {
  if (!against) return [];
  const pairs = groups.filter(({ key }) => key !== '' && key !== against.key).map((group) => ({ group, compared: compareArms(armOf(group), armOf(against), asked) }));
  const chances = pairs.flatMap(({ compared }) => (compared.state === 'compared' && compared.chance !== undefined ? [compared.chance] : []));
  const corrected = holm(chances);
  return pairs.map(({ group, compared }) => {
    const chanceOfAll = compared.state === 'compared' && compared.chance !== undefined ? (corrected.shift() ?? null) : null;
    return { first: group.key, second: against.key, ...pairTold(compared, chanceOfAll) };
  });
}

function pairTold(compared: ArmsCompared, chanceOfAll: number | null): Omit<ComparedPair, 'first' | 'second'> {
  const { state, verdict } = compared;
  return {
    state, mixedUpWith: [...verdict.mixedUpWith], unknown: [...verdict.unknown], advice: [...verdict.advice],
    found: state === 'compared' ? foundOf(compared, chanceOfAll) : null,
  };
}

function foundOf({ by, difference, limitsBy, odds, chance, donors }: ArmDifference, chanceOfAll: number | null): ComparedPair['found'] {
  const isOneSided = difference.lower > 0 || difference.upper < 0;
  return {
    by, ...difference, limitsBy, donors,
    odds: odds ? { ratio: finite(odds.ratio), lower: finite(odds.lower), upper: finite(odds.upper) } : null,
    chance: chance ?? null, chanceOfAll,
    // Without a chance, limits by plants alone would be too sure of themselves.
    isTold: isOneSided && (chanceOfAll === null ? limitsBy === 'donors' : chanceOfAll < LEVEL),
  };
}

/** JSON knows no infinity. */
const finite = (value: number | undefined): number | null => (value !== undefined && Number.isFinite(value) ? value : null);

const armOf = ({ rows }: WorkedGroup): ArmRow[] => rows.map(armRow);

function armRow({ rooted, lost, undecided, ...row }: ComparedRow): ArmRow {
  const told = (['donor', 'tray', 'bench', 'day', 'team', 'recipe', 'stand', 'species', 'also'] as const).flatMap((name) => {
    const level = row[name];
    return level === null ? [] : [[name, level] as const];
  });
  return { rooted, lost, undecided, ...Object.fromEntries(told) };
}
