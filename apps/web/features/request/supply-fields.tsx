import type { Supply } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { Flag } from '../../ui/flag.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { Tag } from '../../ui/tag.tsx';

interface SupplyFieldsProps {
  readonly supplies: readonly Supply[];
  /** What stands in the field to begin with. */
  readonly startOf: (supply: Supply) => number;
  /** What is said of its plants. */
  readonly saysOf: (supply: Supply) => string;
}

/** What each batch gives, in walking order. */
export function SupplyFields({ supplies, startOf, saysOf }: SupplyFieldsProps) {
  const said = useMessages().requests;
  return (
    <div className="w-full max-w-3xl">
      <p aria-hidden className="border-b-2 border-line pb-2 text-right font-semibold">{said.fields.plants}</p>
      <ul className="grid">
        {supplies.map((supply) => (
          <li key={supply.batchId} className="flex items-center justify-between gap-x-6 gap-y-2 border-b border-line py-3">
            <div className="min-w-0">
              <p className="flex flex-wrap items-center gap-2">
                <Tag>{supply.label ?? said.untold}</Tag>
                <span className="font-semibold">{supply.donorTree?.label ?? said.unknownTree}</span>
                <span>{supply.stand?.name}</span>
                {supply.held && <Flag tone="grave">{said.held}</Flag>}
              </p>
              <p className="mt-1 text-sm text-ink-soft">
                {supply.path.join(' › ')}, {saysOf(supply)}
              </p>
            </div>
            <div className="w-24 shrink-0"><TextField isLabelHidden name={`n/${supply.batchId}`} keypad="numeric" isOptional value={startOf(supply) || undefined} /></div>
          </li>
        ))}
      </ul>
    </div>
  );
}

/** What each field is called, by its batch. */
export const supplyLabels = (supplies: readonly Supply[], say: (label: string) => string, untold: string): Record<string, string> =>
  Object.fromEntries(supplies.map(({ batchId, label }) => [`n/${batchId}`, say(label ?? untold)]));
