import { DeterminationEffects, Determinations, DonorTree, SecondOpinion } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { DeterminationsView } from '../../../../../features/origin/determinations-view.tsx';
import { determine } from '../../../../../features/origin/determine.action.ts';
import { EffectsView } from '../../../../../features/origin/effects-view.tsx';
import { SecondOpinionPart } from '../../../../../features/second-opinion/second-opinion-part.tsx';
import { sayDay } from '../../../../../lib/calendar.ts';
import { newId } from '../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { read } from '../../../../../lib/read.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { ActionForm } from '../../../../../ui/form/action-form.tsx';
import { DayField } from '../../../../../ui/form/day-field.tsx';
import { TextField } from '../../../../../ui/form/text-field.tsx';
import { Narrow } from '../../../../../ui/narrow.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Section } from '../../../../../ui/section.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ origins }) => origins.title);

interface OriginPageProps {
  readonly params: Promise<{ programme: string; id: string }>;
  readonly searchParams: Promise<{ tree?: string }>;
}

/** Stands for "not known any more" in the address. */
const NOT_KNOWN = 'unknown';

export default async function OriginPage({ params, searchParams }: OriginPageProps) {
  const [{ programme, id }, { tree: asked }] = await Promise.all([params, searchParams]);
  const [origin, opinion, trees, { isDesk, today }, { origins: said, batches }, t] = await Promise.all([
    read(apiOf(programme, 'stickings', id, 'determinations'), Determinations), read(apiOf(programme, 'stickings', id, 'second-opinion'), SecondOpinion), read(`${apiOf(programme, 'donor-trees')}?limit=200`, z.array(DonorTree)), workplaceOf(programme), getMessages(), getTranslations('origins'),
  ]);
  const treeId = asked === NOT_KNOWN ? undefined : asked;
  const effects = asked ? await read(`${apiOf(programme, 'stickings', id, 'determination-effects')}${treeId ? `?donorTreeId=${encodeURIComponent(treeId)}` : ''}`, DeterminationEffects) : undefined;
  const isSame = effects && (effects.from?.id ?? undefined) === treeId;
  const what = origin.sticking.stuckOn ? sayDay(origin.sticking.stuckOn) : '';
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'batches'), words: batches.title }]} />
      <PageHeading kind={said.title} lead={said.lead}>{t('pageTitle', { what })}</PageHeading>
      <DeterminationsView programme={programme} {...origin} />
      <SecondOpinionPart opinion={opinion} isFolded />
      {isDesk && (
        <Section heading={said.choose} lead={said.chooseLead}>
          <Narrow name="tree" label={said.donorTree} all={said.donorTree} show={said.show} chosen={asked} choices={[...trees.map((one) => ({ id: one.id, name: one.label })), { id: NOT_KNOWN, name: said.notKnown }]} />
          {isSame && <p>{said.same}</p>}
        </Section>
      )}
      {effects && !isSame && <EffectsView programme={programme} effects={effects} />}
      {isDesk && effects && !isSame && (
        <ActionForm action={determine.bind(null, programme, id, treeId)} labels={said.fields} send={said.send} look="grave">
          <input type="hidden" name="id" value={newId()} />
          <TextField name="evidence" hint={said.hints.evidence} />
          <DayField name="determinedOn" today={today} />
        </ActionForm>
      )}
    </>
  );
}
