import { DomainError } from '../errors.ts';
import { isCount } from '../count.ts';

/** Beyond what any bench or bottle has, in any unit; products of such numbers run out. */
const HUGE = 1e100;

function refuseUnlessAbove0(sizes: Readonly<Record<string, number>>): void {
  for (const [name, size] of Object.entries(sizes)) if (!(size > 0 && size < HUGE)) throw new DomainError('bench/not-a-size', `${name} must be a number above 0, of a size that is met with`, { [name]: size });
}

/**
 * Stock solution and diluent for a weaker solution: V1 = C2 V2 / C1.
 *
 * @param stockPpm strength of the stock, mg/L
 * @param wantedPpm strength wanted, at most the stock's
 * @param wantedMl volume wanted, mL
 * @throws DomainError `bench/not-a-size`; `bench/stronger-than-stock`
 */
export function dilution(stockPpm: number, wantedPpm: number, wantedMl: number): { stockMl: number; diluentMl: number } {
  refuseUnlessAbove0({ stockPpm, wantedPpm, wantedMl });
  if (wantedPpm > stockPpm) throw new DomainError('bench/stronger-than-stock', 'diluting makes nothing stronger', { stockPpm, wantedPpm });
  const stockMl = (wantedPpm / stockPpm) * wantedMl;
  return { stockMl, diluentMl: wantedMl - stockMl };
}

/**
 * Per cent by weight to parts per million: 1 % is 10,000 ppm, or 10 g/L in water.
 *
 * @param percent 0 to 100
 * @throws DomainError `bench/not-a-size`
 */
export function ppmOfPercent(percent: number): number {
  if (!(percent >= 0 && percent <= 100)) throw new DomainError('bench/not-a-size', 'a strength lies between 0 and 100 %', { percent });
  return percent * 10_000;
}

/**
 * Medium for a number of containers, with what settles and spills.
 *
 * @param litresEach volume of one, L
 * @param containers a whole number
 * @param extra share on top, such as 0.1
 * @returns L
 * @throws DomainError `bench/not-a-size`, `survival/not-a-count`
 */
export function mediumLitres(litresEach: number, containers: number, extra = 0.1): number {
  refuseUnlessAbove0({ litresEach });
  if (!isCount(containers)) throw new DomainError('survival/not-a-count', 'containers are a whole number', { containers });
  if (!(extra >= 0 && extra < 10)) throw new DomainError('numbers/not-a-share', 'an addition is a share such as 0.1', { extra });
  return litresEach * containers * (1 + extra);
}

export interface Packing {
  readonly trays: number;
  /** Whether the trays stand across the bench rather than along it. */
  readonly isTurned: boolean;
}

/**
 * Whole trays on a bench, all the same way round; the better way.
 *
 * @param bench width and length
 * @param tray width and length in the same unit
 * @throws DomainError `bench/not-a-size`
 */
export function traysOnBench(bench: { width: number; length: number }, tray: { width: number; length: number }): Packing {
  refuseUnlessAbove0({ benchWidth: bench.width, benchLength: bench.length, trayWidth: tray.width, trayLength: tray.length });
  // A tray that fits exactly fits, whatever is left of division.
  const fit = (room: number, size: number): number => Math.floor(room / size + 1e-9);
  const along = fit(bench.width, tray.width) * fit(bench.length, tray.length);
  const turned = fit(bench.width, tray.length) * fit(bench.length, tray.width);
  if (!isCount(along) || !isCount(turned)) throw new DomainError('bench/not-a-size', 'such trays are not of this bench');
  return turned > along ? { trays: turned, isTurned: true } : { trays: along, isTurned: false };
}

/**
 * Daily light integral: light that falls in a day.
 *
 * @param ppfd photosynthetic photon flux density, umol per m2 and second, 0 or more
 * @param hours of light a day, 0 to 24
 * @returns mol per m2 and day
 * @throws DomainError `bench/not-a-size`
 */
export function dailyLight(ppfd: number, hours: number): number {
  if (!(ppfd >= 0 && ppfd < HUGE && hours >= 0 && hours <= 24)) throw new DomainError('bench/not-a-size', 'light is 0 or more, hours 0 to 24', { ppfd, hours });
  return (ppfd * hours * 3600) / 1e6;
}

/** Exact by definition (international inch, 1959): mL of a cubic inch, mm of a foot. Degrees: `celsiusOf`. */
export const ML_PER_CUBIC_INCH = 16.387064;
export const MM_PER_FOOT = 304.8;
