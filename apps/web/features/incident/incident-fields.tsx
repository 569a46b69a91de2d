import type { IncidentShown } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { SAYING } from '../../lib/entry-said.ts';
import { choicesFrom } from '../../ui/form/choices.ts';
import { DateField } from '../../ui/form/date-field.tsx';
import { ProseField } from '../../ui/form/prose-field.tsx';
import { RadioField } from '../../ui/form/radio-field.tsx';

/** What went wrong, how badly, and from when until when. */
export function IncidentFields({ was }: { was?: IncidentShown }) {
  const { incidents: { hints }, entries } = useMessages();
  return (
    <>
      <RadioField name={`${SAYING}what`} value={was?.what} choices={choicesFrom(entries.incidents)} />
      <RadioField name={`${SAYING}severity`} value={was?.severity} choices={choicesFrom(entries.severities)} />
      <DateField name={`${SAYING}lastGoodOn`} isOptional value={was && was.from !== was.observedOn ? was.from : null} hint={hints.lastGoodOn} />
      <DateField name={`${SAYING}untilDay`} isOptional value={was?.endSeen ? null : was?.until} hint={hints.untilDay} />
      <ProseField name={`${SAYING}detail`} isOptional rows={2} value={was?.detail} />
    </>
  );
}
