import { PermissionEnding } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { readIfAllowed } from '../../lib/read-if-allowed.ts';
import { apiOf } from '../../lib/workplace.ts';
import { Flag } from '../../ui/flag.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { Section } from '../../ui/section.tsx';

const AT_A_GLANCE = 4;

/** Permissions that end soon or are nearly used up; only for those who may see permissions at all. */
export async function PermissionsEnding({ programme }: { programme: string }) {
  const [answer, { home: said }, t] = await Promise.all([readIfAllowed(apiOf(programme, 'permissions', 'ending'), z.array(PermissionEnding)), getMessages(), getTranslations('home')]);
  if (!answer) return null;
  const { body: ending } = answer;
  return (
    <Section heading={said.permissions}>
      {ending.length === 0 && <p className="text-ink-soft">{said.noPermissions}</p>}
      <ul className="grid gap-2">
        {ending.slice(0, AT_A_GLANCE).map(({ id, grantedBy, land, validUntil, isPast, used, quota, isNearlyUsed }) => (
          <li key={id} className="flex flex-wrap items-center gap-x-3">
            <RowLink href={pageOf(programme, 'permissions', id)}>{`${grantedBy}, ${land}`}</RowLink>
            <span className="flex flex-wrap gap-1">
              {validUntil && <Flag tone={isPast ? 'grave' : 'look'}>{t(isPast ? 'permissionEnded' : 'permissionEnds', { day: sayDay(validUntil) })}</Flag>}
              {isNearlyUsed && quota !== null && <Flag tone={used >= quota ? 'grave' : 'look'}>{t('permissionUsed', { used, quota })}</Flag>}
            </span>
          </li>
        ))}
      </ul>
      {ending.length > AT_A_GLANCE && <p className="mt-2"><RowLink href={pageOf(programme, 'permissions')}>{t('allPermissions', { n: ending.length })}</RowLink></p>}
    </Section>
  );
}
