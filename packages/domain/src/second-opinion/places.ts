import { type Opinion, notTold } from './opinion.ts';
import type { SecondOpinionQuestion, StickingLine } from './question.ts';

/** A tree of so few cuttings cannot well be split. A working rule. */
const ENOUGH_TO_SPLIT = 4;

/**
 * All of one donor tree in a single tray, or in a single house: one dry tray, or one timer that failed, and the tree is gone.
 *
 * A tree that has living plants in another house is safe from it. Common practice.
 */
export function placesOpinion({ lines, donorsElsewhere, placesPerDonor }: SecondOpinionQuestion): Opinion {
  const trees = linesByDonor(lines).filter(([, own]) => sum(own) >= ENOUGH_TO_SPLIT);
  if (placesPerDonor !== undefined) {
    const facts = { places: placesPerDonor, trees: trees.length };
    return placesPerDonor > 1
      ? { about: 'places', verdict: 'usual', basis: 'common-practice', says: 'split', donors: [], facts }
      : { about: 'places', verdict: 'unusual', basis: 'common-practice', says: 'one-place', donors: [], facts };
  }
  const placed = trees.filter(([, own]) => own.every(({ trayId }) => trayId !== undefined));
  if (placed.length === 0) return notTold('places');

  const alone = placed.filter(([donorId]) => !donorsElsewhere.includes(donorId));
  const inOne = (of: (line: StickingLine) => string | undefined) => alone.filter(([, own]) => new Set(own.map(of)).size === 1).map(([, own]) => own[0]?.donorLabel ?? '');
  const [oneTray, oneHouse] = [inOne(({ trayId }) => trayId), inOne(({ houseId }) => houseId)];
  const facts = { trees: placed.length, oneTray: oneTray.length, oneHouse: oneHouse.length };
  if (oneTray.length > 0) return { about: 'places', verdict: 'unusual', basis: 'common-practice', says: 'one-tray', donors: oneTray, facts };
  if (oneHouse.length > 0) return { about: 'places', verdict: 'unusual', basis: 'common-practice', says: 'one-house', donors: oneHouse, facts };
  return { about: 'places', verdict: 'usual', basis: 'common-practice', says: 'split', donors: [], facts };
}

const linesByDonor = (lines: readonly StickingLine[]) =>
  [...new Set(lines.map(({ donorId }) => donorId))].map((id) => [id, lines.filter(({ donorId }) => donorId === id)] as const);

const sum = (lines: readonly StickingLine[]): number => lines.reduce((all, { cuttings }) => all + cuttings, 0);
