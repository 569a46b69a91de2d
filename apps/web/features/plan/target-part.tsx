import type { PlannedTree, PlanTarget } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import type { ReactNode } from 'react';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { Section } from '../../ui/section.tsx';
import { Table } from '../../ui/table.tsx';
import { AnswerHead, BetsTable, StagesTable, Worked } from './answer-parts.tsx';
import { removeTarget } from './share-plan.action.ts';

interface TargetPartProps {
  readonly programme: string;
  readonly planId: string;
  readonly target: PlanTarget;
  readonly isDesk: boolean;
  /** The second opinion on it. */
  readonly children: ReactNode;
}

/** One stand of a plan: what is wanted, what to stick tree by tree, and what somebody with experience would ask. */
export function TargetPart({ programme, planId, target, isDesk, children }: TargetPartProps) {
  const { plans: said } = useMessages();
  const t = useTranslations('plans');
  const { answer, stand, taxon, site } = target;
  const name = t('targetOf', { taxon: taxon.name, stand: stand.name });
  const left = answer.treesInAll - answer.trees.length;
  return (
    <Section heading={name}>
      <AnswerHead wanted={target} answer={answer} trees={answer.trees.length} site={site?.name} />
      <div className="grid gap-6">
        <TreesTable of={name} programme={programme} trees={answer.trees} isCompared={target.otherRecipeVersionId !== null} hasAnswer={answer.bets !== null} />
        {left > 0 && <p className="-mt-4 text-sm text-ink-soft">{t('left', { n: left })}</p>}
        {children}
        <details>
          <summary className="min-h-8 cursor-pointer py-1 underline">{said.stagesTitle}</summary>
          <div className="mt-2"><StagesTable answer={answer} of={name} /></div>
        </details>
        <BetsTable answer={answer} of={name} />
        <Worked answer={answer} />
        <p className="text-sm text-ink-soft">{t('figuresOn', { day: sayDay(target.figuresOn) })}</p>
        {isDesk && (
          <div className="not-on-paper flex flex-wrap items-start gap-3">
            <ButtonLink look="quiet" href={pageOf(programme, 'plans', planId, 'targets', target.id)}>{said.changeTarget}</ButtonLink>
            <ActionForm action={removeTarget.bind(null, programme, planId, target.id)} send={t('remove', { stand: stand.name })} look="grave" />
          </div>
        )}
      </div>
    </Section>
  );
}

interface TreesTableProps {
  readonly of: string;
  readonly programme: string;
  readonly trees: readonly PlannedTree[];
  readonly isCompared: boolean;
  readonly hasAnswer: boolean;
}

function TreesTable({ of, programme, trees, isCompared, hasAnswer }: TreesTableProps) {
  const { plans: said } = useMessages();
  const t = useTranslations('plans');
  const heads = said.treeColumns;
  return (
    <Table
      caption={`${said.treesTitle}: ${of}`} isStacked rows={trees} keyOf={({ donorId }) => donorId}
      columns={[
        { head: heads.tree, cell: ({ treeId, label }) => <RowLink href={pageOf(programme, 'donor-trees', treeId)}>{label}</RowLink> },
        ...(hasAnswer ? [{ head: heads.cuttings, isNumber: true, cell: ({ cuttings }: PlannedTree) => <strong>{cuttings}</strong> }] : []),
        ...(hasAnswer && isCompared ? [{ head: heads.ofOther, isNumber: true, cell: ({ ofOther }: PlannedTree) => ofOther }] : []),
        { head: heads.age, cell: ({ ageYears }) => (ageYears === null ? null : t('years', { n: ageYears })) },
        { head: heads.cut, cell: ({ cutOn }) => cutOn && sayDay(cutOn) },
        { head: heads.here, isNumber: true, cell: ({ plantsHere }) => plantsHere },
      ]}
    />
  );
}
