import { latticeOf, type Step } from './lattice.ts';
import type { Position } from './position.ts';
import { classOf, type Sublattice, sublatticesOf } from './sublattices.ts';

/** A layout to begin from, as numbers of donors by position. */
export interface Start {
  readonly donors: readonly number[];
  /** How near copies would stand if each donor tree had a class to itself. */
  readonly nearest: number;
}

/** So many fewer classes are tried than the largest donor leaves room for: they hold its plants where classes differ at the edges. */
const FEWER = 3;
const OF_EACH = 3;

/**
 * Layouts in which each donor tree holds a coarser lattice of its own, the widest first; none where positions lie on no lattice.
 *
 * Classes differ at the edges and donors in their plants, so both ways of filling are tried; what they get wrong is mended afterwards.
 */
export function latticeStarts(counts: readonly number[], positions: readonly Position[]): Start[] {
  const lattice = latticeOf(positions);
  const room = Math.floor(positions.length / counts.reduce((most, n) => Math.max(most, n), 1));
  if (!lattice || room < 2) return [];
  const tried = Array.from({ length: Math.min(FEWER, room - 1) }, (_, fewer) => sublatticesOf(lattice, room - fewer).slice(0, OF_EACH)).flat();
  return tried.sort((one, other) => other.nearest - one.nearest).flatMap((sublattice) => {
    const classes = membersOf(sublattice, lattice.steps);
    const biggestFirst = [...counts.entries()].sort(([, one], [, other]) => other - one);
    return [roomByRoom(biggestFirst, classes), oneAfterTheOther(biggestFirst, classes)].map((donors) => ({ donors, nearest: sublattice.nearest }));
  });
}

function membersOf(sublattice: Sublattice, steps: readonly Step[]): number[][] {
  const members: number[][] = Array.from({ length: sublattice.p * sublattice.r }, () => []);
  for (const [at, step] of steps.entries()) members[classOf(sublattice, step)]!.push(at);
  return members.sort((one, other) => other.length - one.length);
}

type Donors = readonly (readonly [donor: number, plants: number])[];

/** Each donor in the smallest class that holds all of its plants, or else in the one that holds most of them; who finds no room stands where room is left. */
function roomByRoom(donors: Donors, classes: readonly (readonly number[])[]): number[] {
  const free = classes.map((members) => [...members]);
  const placed: number[] = [];
  const homeless: number[] = [];
  for (const [donor, n] of donors) {
    const home = free.reduce((best, one) => (fitsBetter(one.length, best.length, n) ? one : best));
    const taken = home.splice(0, n);
    for (const at of taken) placed[at] = donor;
    for (let plant = taken.length; plant < n; plant += 1) homeless.push(donor);
  }
  for (const at of free.flat()) placed[at] = homeless.pop()!;
  return placed;
}

const fitsBetter = (room: number, than: number, n: number): boolean => (than < n ? room > than : room >= n && room < than);

/** Classes filled to the last position: who spills over holds the end of one and the beginning of the next, far from each other. */
function oneAfterTheOther(donors: Donors, classes: readonly (readonly number[])[]): number[] {
  const order = donors.flatMap(([donor, n]) => Array.from({ length: n }, () => donor));
  const placed: number[] = [];
  for (const [next, at] of classes.flat().entries()) placed[at] = order[next]!;
  return placed;
}
