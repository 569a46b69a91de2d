import { between, type Position } from './position.ts';

/**
 * How far apart n points among these positions can stand at most: no layout does better.
 *
 * @returns a distance; infinite for fewer than two points
 *
 * Source: n <= 2 A / (sqrt(3) d^2) + P / (2 d) + 1 in a convex region of area A and perimeter P, Groemer H (1960)
 * Math. Z. 73:285-294; from memory.
 */
export function packingBound(n: number, positions: readonly Position[]): number {
  if (n < 2) return Number.POSITIVE_INFINITY;
  const hull = hullOf(positions);
  const edges = hull.map((corner, at) => [corner, hull[(at + 1) % hull.length]!] as const);
  const area = Math.abs(edges.reduce((sum, [a, b]) => sum + a.x * b.y - b.x * a.y, 0)) / 2;
  const perimeter = edges.reduce((sum, [a, b]) => sum + between(a, b), 0);
  // The rule solved for d: (n - 1) d^2 - (P / 2) d - 2 A / sqrt(3) = 0.
  const half = perimeter / 2;
  return (half + Math.sqrt(half * half + (8 * (n - 1) * area) / Math.sqrt(3))) / (2 * (n - 1));
}

/** Corners of the convex hull, counterclockwise (Andrew's monotone chain); none of a single position. */
function hullOf(positions: readonly Position[]): Position[] {
  const sorted = [...positions].sort((a, b) => a.x - b.x || a.y - b.y);
  const chain = (points: readonly Position[]): Position[] => {
    const corners: Position[] = [];
    for (const point of points) {
      while (corners.length >= 2 && turns(corners.at(-2)!, corners.at(-1)!, point) <= 0) corners.pop();
      corners.push(point);
    }
    return corners.slice(0, -1);
  };
  return [...chain(sorted), ...chain(sorted.reverse())];
}

/** Above 0 where the way from a over b to c turns left. */
const turns = (a: Position, b: Position, c: Position): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
