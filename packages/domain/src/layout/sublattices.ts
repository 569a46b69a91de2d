import type { Lattice, Step } from './lattice.ts';

/** A coarser lattice within a lattice: steps of (p, 0) and (q, r). The p x r lattices that it can be moved to are its classes. */
export interface Sublattice {
  readonly p: number;
  readonly q: number;
  readonly r: number;
  /** How near two points of one class stand. */
  readonly nearest: number;
}

/**
 * All sublattices of so many classes, the widest first: a donor tree in each class has its copies that far apart.
 *
 * Each is listed once, in Hermite's normal form. On a square grid the widest comes near to sqrt(classes x 2 / sqrt 3), the hexagonal ideal.
 */
export function sublatticesOf({ along, across }: Lattice, classes: number): Sublattice[] {
  const found: Sublattice[] = [];
  for (let r = 1; r <= classes; r += 1) {
    if (classes % r !== 0) continue;
    const p = classes / r;
    for (let q = 0; q < p; q += 1) {
      const nearest = shortest([p * along.x, p * along.y], [q * along.x + r * across.x, q * along.y + r * across.y]);
      found.push({ p, q, r, nearest });
    }
  }
  return found.sort((one, other) => other.nearest - one.nearest);
}

/** The class of a point, from 0 on. */
export function classOf({ p, q, r }: Sublattice, { a, b }: Step): number {
  const [rest, turns] = [modulo(b, r), Math.floor(b / r)];
  return rest * p + modulo(a - turns * q, p);
}

const modulo = (value: number, by: number): number => ((value % by) + by) % by;

type Vector = readonly [number, number];
const dot = (u: Vector, v: Vector): number => u[0] * v[0] + u[1] * v[1];

/** Length of the shortest vector that two span (Gauss's reduction). */
function shortest(u: Vector, v: Vector): number {
  for (;;) {
    if (dot(u, u) > dot(v, v)) [u, v] = [v, u];
    const times = Math.round(dot(u, v) / dot(u, u));
    if (times === 0) return Math.sqrt(dot(u, u));
    v = [v[0] - times * u[0], v[1] - times * u[1]];
  }
}
