import type { LeaveOrCall } from '@sprigline/contract';
import { csvOf } from '../http/csv.ts';

/** A line for each tray; the chance is between 0 and 1, plants are what is expected. */
export const traysAsCsv = ({ trays, asOf }: LeaveOrCall): string =>
  csvOf(
    ['tray', 'place', 'donor tree', 'stuck on', 'days', 'green without roots', 'chance to root', 'plants in the next month', 'plants in all', 'months', 'plants a month', 'hands off until', 'verdict on', 'resting on', 'as of'],
    trays.map((tray) => [
      tray.label ?? undefined, tray.place.name, tray.donorTree ?? undefined, tray.stuckOn, tray.days, tray.green, tray.chance ?? undefined, tray.nextMonth ?? undefined, tray.inAll ?? undefined,
      tray.months ?? undefined, tray.perMonth ?? undefined, tray.handsOffUntil ?? undefined, tray.verdictOn, tray.state, asOf,
    ]),
  );
