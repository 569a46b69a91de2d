import { ChoiceField } from './choice-field.tsx';
import type { ReactNode } from 'react';

/** A time zone of the IANA database, as this server knows them. */
export function ZoneField({ name, value, hint }: { name: string; value?: string; hint?: ReactNode }) {
  const zones = Intl.supportedValuesOf('timeZone');
  const known = value === undefined || zones.includes(value) ? zones : [value, ...zones];
  return <ChoiceField name={name} value={value} hint={hint} choices={known.map((zone) => ({ value: zone, words: zone.replaceAll('_', ' ') }))} />;
}
