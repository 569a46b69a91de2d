import type { PlannedTree, PlanTarget } from '@sprigline/contract';
import { Text, View } from '@react-pdf/renderer';
import type { Messages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import type { OpinionSaid } from '../../lib/opinion-said.ts';
import { look } from '../../ui/paper/look.ts';
import { PaperHeading } from '../../ui/paper/paper-heading.tsx';
import { PaperTable, WriteBox } from '../../ui/paper/paper-table.tsx';
import { answerSaid, averageSaid, betterBet, bringsSaid, wantedSaid } from './answer-said.ts';

interface PlanPaperProps {
  readonly targets: readonly PlanTarget[];
  /** The second opinion on each target, in words. */
  readonly opinions: readonly (readonly OpinionSaid[])[];
  readonly said: Messages['plans'];
  readonly opinionHeading: string;
  readonly t: ReturnType<typeof useTranslations<'plans'>>;
}

/** A plan to take up the hill: stand by stand, tree by tree, with a box for what was really cut. */
export function PlanPaper({ targets, opinions, said, opinionHeading, t }: PlanPaperProps) {
  return (
    <>
      {targets.length === 0 && <Text>{said.noTargets}</Text>}
      {targets.map((target, at) => (
        <View key={target.id}>
          <PaperHeading>{t('targetOf', { taxon: target.taxon.name, stand: target.stand.name })}</PaperHeading>
          <TargetHead target={target} said={said} t={t} />
          <TreesOnPaper target={target} said={said} t={t} />
          <Text style={{ marginTop: 6 }}>{[betterBet(target.answer, said), t('figuresOn', { day: sayDay(target.figuresOn) })].filter(Boolean).join(' ')}</Text>
          <OpinionOnPaper heading={opinionHeading} opinions={opinions[at] ?? []} />
        </View>
      ))}
      <View style={look.caution} wrap={false}><Text>{said.caution}</Text></View>
    </>
  );
}

function TargetHead({ target, said, t }: { target: PlanTarget } & Pick<PlanPaperProps, 'said' | 't'>) {
  const { answer, site } = target;
  return (
    <>
      <Text>{wantedSaid(target, site?.name, said, t)}</Text>
      <Text style={{ fontWeight: 700, fontSize: 11, marginVertical: 3 }}>{answerSaid(target, answer, answer.trees.length, t)}</Text>
      <Text style={look.lead}>{[bringsSaid(answer, t), averageSaid(answer, t), t('dates', { first: answer.firstCheckDays, verdict: answer.verdictDays })].filter(Boolean).join(' ')}</Text>
    </>
  );
}

function TreesOnPaper({ target: { answer, otherRecipeVersionId }, said, t }: { target: PlanTarget } & Pick<PlanPaperProps, 'said' | 't'>) {
  const heads = said.treeColumns;
  const isCompared = otherRecipeVersionId !== null;
  return (
    <PaperTable
      rows={answer.trees} keyOf={({ donorId }) => donorId}
      columns={[
        { head: heads.tree, share: 2.2, cell: ({ label }) => <Text style={look.code}>{label}</Text> },
        { head: heads.cuttings, share: 1, isNumber: true, cell: ({ cuttings }) => (answer.bets ? cuttings : '') },
        ...(isCompared ? [{ head: heads.ofOther, share: 1.4, isNumber: true, cell: ({ ofOther }: PlannedTree) => ofOther }] : []),
        { head: said.cutBox, share: 1.2, cell: () => <WriteBox /> },
        { head: heads.age, share: 1.4, cell: ({ ageYears }) => (ageYears === null ? '' : t('years', { n: ageYears })) },
        { head: heads.cut, share: 1.6, cell: ({ cutOn }) => (cutOn ? sayDay(cutOn) : '') },
        { head: heads.here, share: 1.1, isNumber: true, cell: ({ plantsHere }) => plantsHere },
      ]}
    />
  );
}

/** Only what is unusual: paper has no room for what is as usual. */
function OpinionOnPaper({ heading, opinions }: { heading: string; opinions: readonly OpinionSaid[] }) {
  const unusual = opinions.filter(({ verdict }) => verdict === 'unusual');
  if (unusual.length === 0) return null;
  return (
    <View style={{ marginTop: 6 }}>
      <Text style={{ fontWeight: 700 }}>{heading}</Text>
      {unusual.map(({ key, about, says, why, rests, trees }) => <Text key={key} style={{ marginTop: 2 }}>{[`${about}: ${says}`, trees, why, `(${rests})`].filter(Boolean).join(' ')}</Text>)}
    </View>
  );
}
