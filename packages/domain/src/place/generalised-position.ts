import { DomainError } from '../errors.ts';

/** The square of a grid that a position lies in. WGS 84; the point is the square's centre. */
export interface Cell {
  /** Degrees, -90..90. */
  readonly latitude: number;
  /** Degrees, -180..180. */
  readonly longitude: number;
  /** Side of the square in degrees: 0.1, 0.01 or 0.001. */
  readonly degrees: number;
  /** From the centre to a corner, in metres: how far off the true place may be. */
  readonly halfDiagonalM: number;
}

/** Side of the cell in millionths of a degree, by class: 1 extreme (withheld), 2 high, 3 medium, 4 low, 0 not sensitive. */
const SIDE: Readonly<Record<number, number>> = { 0: 1_000, 2: 100_000, 3: 10_000, 4: 1_000 };

const MILLION = 1_000_000;
/** Mean radius of the earth in metres (IUGG R1), as for a sphere. */
const EARTH_RADIUS_M = 6_371_008.8;

/**
 * Where a wild tree may be said to stand without giving it away.
 *
 * Rounded to a grid, once, from the position as stored: a random offset could be
 * averaged away, and two roundings of one point narrow it down. Class 0 gets the
 * finest cell as well, since whoever may see the exact place sees it elsewhere.
 * Halves are rounded away from zero, in whole millionths of a degree, so that no
 * binary fraction decides.
 *
 * @param latitude degrees, -90..90; read to six decimals
 * @param longitude degrees, -180..180; read to six decimals
 * @returns the cell, or undefined for class 1, which is withheld
 * @throws DomainError `place/not-on-earth` for a position outside those ranges
 * @throws DomainError `place/no-such-class` for a class that is not 0..4
 *
 * Source: Chapman AD (2020) Current best practices for generalizing sensitive
 * species occurrence data, GBIF, doi:10.15468/doc-5jp4-5g10, categories 1 to 4.
 */
export function generalisedPosition(latitude: number, longitude: number, sensitivity: number): Cell | undefined {
  if (!(Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180)) {
    throw new DomainError('place/not-on-earth', 'latitude runs from -90 to 90 degrees, longitude from -180 to 180');
  }
  if (sensitivity === 1) return undefined;
  const side = SIDE[sensitivity];
  if (side === undefined) throw new DomainError('place/no-such-class', 'a class of sensitivity is 0, 1, 2, 3 or 4');

  const centre = toGrid(latitude, side);
  return {
    latitude: centre,
    longitude: toGrid(longitude, side),
    degrees: side / MILLION,
    halfDiagonalM: cellHalfDiagonalM(centre, side / MILLION),
  };
}

function toGrid(degrees: number, side: number): number {
  const millionths = Math.round(Math.abs(degrees) * MILLION);
  const rounded = Math.floor((millionths + side / 2) / side) * side;
  // Adding zero turns -0 into 0.
  return (Math.sign(degrees) * rounded) / MILLION + 0;
}

/**
 * From the centre of a cell to its corner, in metres, on a sphere.
 *
 * @param latitude of the centre, in degrees
 * @param degrees side of the cell
 */
export function cellHalfDiagonalM(latitude: number, degrees: number): number {
  const northSouth = (degrees * Math.PI * EARTH_RADIUS_M) / 180;
  const eastWest = northSouth * Math.cos((latitude * Math.PI) / 180);
  return Math.hypot(northSouth, eastWest) / 2;
}
