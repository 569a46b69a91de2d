import { useMessages, useTranslations } from 'next-intl';
import { percent } from '../../lib/percent.ts';
import { Table } from '../../ui/table.tsx';
import { type Answer, answerSaid, averageSaid, betterBet, bringsSaid, type Wanted, wantedSaid, workedSaid } from './answer-said.ts';

interface AnswerPartsProps {
  readonly wanted: Wanted;
  readonly answer: Answer;
  readonly trees: number;
  readonly site?: string | undefined;
}

/** What is wanted, what to stick for it, and what that should bring: the same for us and for people outside. */
export function AnswerHead({ wanted, answer, trees, site }: AnswerPartsProps) {
  const { plans: said } = useMessages();
  const t = useTranslations('plans');
  return (
    <div className="mb-5 grid max-w-prose gap-2">
      <p>{wantedSaid(wanted, site, said, t)}</p>
      <p className="text-lg font-semibold">{answerSaid(wanted, answer, trees, t)}</p>
      <p>{bringsSaid(answer, t)}</p>
      <p className="text-sm text-ink-soft">{averageSaid(answer, t)} {t('dates', { first: answer.firstCheckDays, verdict: answer.verdictDays })}</p>
    </div>
  );
}

/** A plan has several tables of a kind: each says of which stand it is. */
const captionOf = (what: string, of: string): string => `${what}: ${of}`;

/** What each stage has to begin with, and the shares that it rests on. */
export function StagesTable({ answer: { needed, steps, rooting }, of }: { answer: Answer; of: string }) {
  const { plans: said, words } = useMessages();
  const t = useTranslations('plans');
  const { stageColumns: heads } = said;
  const rates = [{ stage: 'cutting' as const, rate: rooting.mean, goneOn: rooting.goneOn, settled: rooting.settled, prior: rooting.prior.mean }, ...steps.map(({ from, ...step }) => ({ stage: from, ...step }))];
  return (
    <Table
      caption={captionOf(said.stagesTitle, of)} isStacked rows={rates} keyOf={({ stage }) => stage}
      columns={[
        { head: heads.stage, cell: ({ stage }) => words.stage[stage] },
        { head: heads.plants, isNumber: true, cell: ({ stage }) => needed?.stages.find((one) => one.stage === stage)?.plants },
        { head: heads.rate, isNumber: true, cell: ({ rate }) => percent(rate) },
        { head: heads.own, isNumber: true, cell: ({ goneOn, settled }) => t('own', { goneOn, settled }) },
        { head: heads.prior, isNumber: true, cell: ({ prior }) => percent(prior) },
      ]}
    />
  );
}

/** One more tree, or as many more cuttings. */
export function BetsTable({ answer, of }: { answer: Answer; of: string }) {
  const { plans: said } = useMessages();
  const { bets } = answer;
  if (!bets) return null;
  const heads = said.betColumns;
  const rows = (['asPlanned', 'oneMoreTree', 'moreCuttings'] as const).map((way) => ({ way, ...bets[way] }));
  return (
    <div>
      <Table
        caption={captionOf(said.bets, of)} isStacked rows={rows} keyOf={({ way }) => way}
        columns={[
          { head: heads.way, cell: ({ way }) => said.betWays[way] },
          { head: heads.trees, isNumber: true, cell: ({ trees }) => trees },
          { head: heads.cuttings, isNumber: true, cell: ({ cuttings }) => cuttings },
          { head: heads.plants, isNumber: true, cell: ({ expectedPlants }) => Math.round(expectedPlants) },
          { head: heads.donors, isNumber: true, cell: ({ expectedDonors }) => expectedDonors.toFixed(1) },
          { head: heads.chance, isNumber: true, cell: ({ chance }) => percent(chance) },
          { head: heads.capture, isNumber: true, cell: ({ capture }) => percent(capture) },
        ]}
      />
      <p className="mt-2 max-w-prose">{betterBet(answer, said)}</p>
    </div>
  );
}

export function Worked({ answer }: { answer: Answer }) {
  const { plans: said } = useMessages();
  const [t, opinion] = [useTranslations('plans'), useTranslations('secondOpinion')];
  const basis = opinion(`basis.${answer.rooting.prior.basis}`, { species: answer.species?.name ?? '' });
  return (
    <details>
      <summary className="min-h-8 cursor-pointer py-1 underline">{said.worked.title}</summary>
      <div className="mt-1 grid max-w-prose gap-1.5 text-sm text-ink-soft">{workedSaid(answer, said, basis, t).map((one) => <p key={one}>{one}</p>)}</div>
    </details>
  );
}
