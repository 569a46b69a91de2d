import type { Forecast } from '@sprigline/contract';
import { useFormatter, useMessages } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { Table } from '../../ui/table.tsx';

type OfSpecies = Forecast['species'][number];

/** Table twins: the months ahead, and past forecasts with what came. */
export function ForecastTable({ species: { months, past } }: { species: OfSpecies }) {
  const { forecast: said } = useMessages();
  const { number } = useFormatter();
  const whole = (n: number): string => number(Math.round(n));
  const range = ({ lower, upper }: { lower: number; upper: number }): string => `${number(Math.floor(lower))}–${number(Math.ceil(upper))}`;
  return (
    <div className="grid gap-6">
      <Table
        caption={said.title}
        rows={months}
        keyOf={({ on }) => on}
        columns={[
          { head: said.month, cell: ({ on }) => sayDay(on) },
          { head: said.expected, isNumber: true, cell: ({ expected }) => whole(expected) },
          { head: said.limits, isNumber: true, cell: range },
        ]}
      />
      {past.length > 0 && (
        <Table
          caption={said.pastTitle}
          rows={past}
          keyOf={({ madeOn }) => madeOn}
          columns={[
            { head: said.madeOn, cell: ({ madeOn }) => sayDay(madeOn) },
            { head: said.month, cell: ({ on }) => sayDay(on) },
            { head: said.expected, isNumber: true, cell: ({ expected }) => whole(expected) },
            { head: said.limits, isNumber: true, cell: range },
            { head: said.came, isNumber: true, cell: ({ came }) => number(came) },
            { head: said.held, cell: ({ came, lower, upper }) => (came >= lower && came <= upper ? said.yes : said.no) },
          ]}
        />
      )}
    </div>
  );
}
