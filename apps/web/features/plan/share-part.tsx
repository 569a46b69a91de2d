import type { PlanShare } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayMoment } from '../../lib/calendar.ts';
import { newId } from '../../lib/new-id.ts';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { Section } from '../../ui/section.tsx';
import { Table } from '../../ui/table.tsx';
import { revokeShare, sharePlan } from './share-plan.action.ts';

/** Links for people outside: a new one, and those that were made. */
export function SharePart({ programme, planId, shares, zone }: { programme: string; planId: string; shares: readonly PlanShare[]; zone: string }) {
  const { plans: said } = useMessages();
  const t = useTranslations('plans');
  const heads = said.shareColumns;
  return (
    <div className="not-on-paper">
      <Section heading={said.share} lead={said.shareLead}>
        <ActionForm action={sharePlan.bind(null, programme, planId)} labels={said.fields} send={said.shareSend} look="quiet" madeWords={said.shareMade}>
          <input type="hidden" name="id" value={newId()} />
          <TextField name="forName" hint={said.hints.forName} />
          <TextField name="days" keypad="numeric" value={14} hint={said.hints.days} />
        </ActionForm>
        {shares.length > 0 && (
          <div className="mt-8">
            <Table
              caption={said.shares} isStacked rows={shares} keyOf={({ id }) => id}
              columns={[
                { head: heads.forName, cell: ({ forName }) => forName },
                { head: heads.madeBy, cell: ({ madeBy }) => madeBy },
                { head: heads.until, cell: ({ expiresAt }) => sayMoment(expiresAt, zone) },
                { head: heads.state, cell: ({ id, forName, state }) => (state === 'open' ? <ActionForm action={revokeShare.bind(null, programme, planId, id)} send={t('revoke', { name: forName })} look="grave" /> : said.shareStates[state]) },
              ]}
            />
          </div>
        )}
      </Section>
    </div>
  );
}
