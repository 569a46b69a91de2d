import type { Supply } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { Flag } from '../../ui/flag.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { Tag } from '../../ui/tag.tsx';

interface SupplyFieldsProps {
  readonly supplies: readonly Supply[];
  /** What stands in the field to begin with. */
  readonly startOf: (supply: Supply) => number;
}

/** What each batch gives, in walking order. */
export function SupplyFields({ supplies, startOf }: SupplyFieldsProps) {
  const said = useMessages().requests;
  const t = useTranslations('requests');
  return (
    <ul className="grid w-full max-w-3xl">
      {supplies.map((supply) => (
        <li key={supply.batchId} className="flex flex-wrap items-end justify-between gap-x-6 gap-y-2 border-b border-line py-3">
          <div className="min-w-0">
            <p className="flex flex-wrap items-center gap-2">
              <Tag>{supply.label ?? said.untold}</Tag>
              <span className="font-semibold">{supply.donorTree?.label ?? said.unknownTree}</span>
              <span>{supply.stand?.name}</span>
              {supply.held && <Flag tone="grave">{said.held}</Flag>}
            </p>
            <p className="mt-1 text-sm text-ink-soft">
              {supply.path.join(' › ')}, {t('lineFree', { free: supply.free, there: supply.balance })}
            </p>
          </div>
          <div className="w-44"><TextField name={`n/${supply.batchId}`} keypad="numeric" isOptional value={startOf(supply) || undefined} /></div>
        </li>
      ))}
    </ul>
  );
}

/** What each field is called, by its batch. */
export const supplyLabels = (supplies: readonly Supply[], say: (label: string) => string, untold: string): Record<string, string> =>
  Object.fromEntries(supplies.map(({ batchId, label }) => [`n/${batchId}`, say(label ?? untold)]));
