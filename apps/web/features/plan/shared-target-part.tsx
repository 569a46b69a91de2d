import type { SharedTarget } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import type { ReactNode } from 'react';
import { sayDay } from '../../lib/calendar.ts';
import { Facts } from '../../ui/facts.tsx';
import { Section } from '../../ui/section.tsx';
import { Table } from '../../ui/table.tsx';
import { AnswerHead, BetsTable, StagesTable, Worked } from './answer-parts.tsx';

type Tree = SharedTarget['answer']['trees'][number];

/** One target as people outside see it. */
export function SharedTargetPart({ target, number: at, children }: { target: SharedTarget; /** Which one of the plan it is, since its stand may have no name here. */ number: number; children: ReactNode }) {
  const { plans: said } = useMessages();
  const t = useTranslations('plans');
  const { answer, stand, taxon } = target;
  const { treeColumns: heads, shared } = said;
  const isCompared = answer.trees.some(({ ofOther }) => ofOther > 0);
  const name = stand === null ? t('targetAny', { taxon, n: at }) : t('targetOf', { taxon, stand });
  return (
    <Section heading={name}>
      <AnswerHead wanted={target} answer={answer} trees={answer.trees.length} />
      <div className="grid gap-6">
        <div><h3 className="mb-1 font-semibold">{shared.how}</h3><Facts facts={factsOf(target, said, t)} /></div>
        {children}
        <Table
          caption={`${said.treesTitle}: ${name}`} isStacked rows={answer.trees} keyOf={({ number }) => String(number)}
          columns={[
            { head: heads.tree, cell: ({ number }) => t('shared.tree', { n: number }) },
            ...(answer.bets ? [{ head: heads.cuttings, isNumber: true, cell: ({ cuttings }: Tree) => cuttings }] : []),
            ...(isCompared ? [{ head: heads.ofOther, isNumber: true, cell: ({ ofOther }: Tree) => ofOther }] : []),
            { head: heads.age, cell: ({ age }) => age && shared.ages[age] },
          ]}
        />
        <StagesTable answer={answer} of={name} />
        <BetsTable answer={answer} of={name} />
        <Worked answer={answer} />
        <p className="text-sm text-ink-soft">{t('figuresOn', { day: sayDay(target.figuresOn) })}</p>
      </div>
    </Section>
  );
}

function factsOf({ medium, hormone, hormonePpm, lengthCm, wood, lightHours, placesPerDonor, stickOn }: SharedTarget, said: ReturnType<typeof useMessages>['plans'], t: ReturnType<typeof useTranslations<'plans'>>) {
  const { facts } = said.shared;
  return [
    { term: facts.medium, says: medium },
    { term: facts.hormone, says: hormonePpm === null ? hormone : t('shared.ppm', { hormone: hormone ?? '', ppm: hormonePpm }).trim() },
    { term: facts.length, says: lengthCm === null ? null : t('shared.cm', { n: lengthCm }) },
    { term: facts.wood, says: wood === null ? null : said.wood[wood] },
    { term: facts.light, says: lightHours === null ? null : t('shared.hours', { n: lightHours }) },
    { term: facts.places, says: placesPerDonor },
    { term: facts.stickOn, says: stickOn === null ? null : sayDay(stickOn) },
  ];
}
