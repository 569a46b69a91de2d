import { DueItem } from '@sprigline/contract';
import { notFound } from 'next/navigation';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { putOff } from '../../../../../features/due/put-off.action.ts';
import { thingOf } from '../../../../../features/due/thing-of.ts';
import { newId } from '../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { readPart } from '../../../../../lib/pages.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf } from '../../../../../lib/workplace.ts';
import { DateField } from '../../../../../ui/form/date-field.tsx';
import { FormPage } from '../../../../../ui/form/form-page.tsx';
import { TextField } from '../../../../../ui/form/text-field.tsx';

interface PutOffPageProps {
  readonly params: Promise<{ programme: string }>;
  /** `at`: where the thing stands, so that it is found among many. */
  readonly searchParams: Promise<{ thing?: string; on?: string; at?: string }>;
}

export const generateMetadata = titled(({ due }) => due.putOff);

export default async function PutOffPage({ params, searchParams }: PutOffPageProps) {
  const { programme } = await params;
  const { thing: key = '', on = '', at } = await searchParams;
  const thing = thingOf(key, on);
  if (!thing) notFound();
  const [item, { due: said }, t] = await Promise.all([itemOf(programme, key, { kind: thing.kind, ...(at ? { placeId: at } : {}) }), getMessages(), getTranslations('due')]);
  const kinds: Readonly<Record<string, string>> = said.kinds;
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'due'), words: said.title }]}
      title={item ? t('putOffTitle', { what: kinds[thing.kind] ?? thing.kind, where: item.batch?.label ?? item.place.name }) : said.putOff}
      lead={said.putOffLead}
      action={putOff.bind(null, programme, thing)}
      labels={said.fields}
      send={said.putOffSend}
      newId={newId()}
    >
      <DateField name="until" hint={said.hints.until} />
      <TextField name="reason" hint={said.hints.reason} />
    </FormPage>
  );
}

/** The thing by its key, for its name; what is not due any more has none, and the API says so. */
async function itemOf(programme: string, key: string, near: Readonly<Record<string, string>>): Promise<DueItem | undefined> {
  const { items } = await readPart(`${apiOf(programme, 'due')}?${new URLSearchParams({ ...near, until: '2999-12-31', limit: '200' })}`, z.array(DueItem));
  return items.find((item) => item.key === key);
}
