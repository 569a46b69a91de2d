import { getMessages, getTranslations } from 'next-intl/server';
import type { Route } from 'next';
import { notFound, redirect } from 'next/navigation';
import { ClaimForm } from '../../../../../features/scan/claim-form.tsx';
import { CLAIMS, ClaimWays } from '../../../../../features/scan/claim-ways.tsx';
import { thingsToClaim } from '../../../../../features/scan/things-to-claim.ts';
import { labelBearer } from '../../../../../lib/label-bearer.ts';
import { placesOf, standsOf } from '../../../../../lib/lists.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { placeChoices } from '../../../../../lib/place-path.ts';
import { titled } from '../../../../../lib/titled.ts';
import { wayToBearer } from '../../../../../lib/way-to-bearer.ts';
import { workplaceOf } from '../../../../../lib/workplace.ts';
import { choicesOf } from '../../../../../ui/form/choices.ts';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Tag } from '../../../../../ui/tag.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

interface ClaimPageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<{ code?: string; on?: string; placeId?: string; standId?: string }>;
}

export const generateMetadata = titled(({ scan }) => scan.claim.title);

/** A label from a roll was scanned for the first time. */
export default async function ClaimPage({ params, searchParams }: ClaimPageProps) {
  const [{ programme }, { code, on: asked, placeId, standId }] = await Promise.all([params, searchParams]);
  const [bearer, { role }] = await Promise.all([code ? labelBearer(programme, code) : undefined, workplaceOf(programme)]);
  // Partners put labels on nothing; a code that nobody drew is no label.
  if (!code || !bearer || role === 'partner') notFound();
  if (bearer.is !== 'unclaimed') redirect(wayToBearer(programme, bearer) as Route);
  const on = CLAIMS.find((one) => one === asked);
  const [{ scan }, t, places, stands, things] = await Promise.all([
    getMessages(), getTranslations('scan.claim'), on === 'batch' ? placesOf(programme) : [], on === 'donorTree' ? standsOf(programme) : [], on && thingsToClaim(programme, on, placeId, standId),
  ]);
  const ways = `${pageOf(programme, 'scan', 'claim')}?${new URLSearchParams({ code: bearer.code })}`;
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'scan'), words: scan.title }, ...(on ? [{ href: ways, words: bearer.code }] : [])]} />
      <PageHeading kind={<Tag>{bearer.code}</Tag>} lead={on ? undefined : scan.claim.lead}>{on ? t(`titles.${on}`) : scan.claim.title}</PageHeading>
      {!on && <ClaimWays programme={programme} code={bearer.code} />}
      {on === 'batch' && <ClaimForm programme={programme} code={bearer.code} on={on} where={{ name: 'placeId', chosen: placeId, choices: placeChoices(places, ({ plantsWithin }) => plantsWithin > 0) }} things={things} />}
      {on === 'donorTree' && <ClaimForm programme={programme} code={bearer.code} on={on} where={{ name: 'standId', chosen: standId, choices: choicesOf(stands) }} things={things} />}
      {on === 'place' && <ClaimForm programme={programme} code={bearer.code} on={on} things={things} />}
    </>
  );
}
