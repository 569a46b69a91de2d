import { Question } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { sayDay, sayMoment } from '../../lib/calendar.ts';
import { newId } from '../../lib/new-id.ts';
import { pageOf } from '../../lib/page-address.ts';
import { read } from '../../lib/read.ts';
import { apiOf } from '../../lib/workplace.ts';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { ProseField } from '../../ui/form/prose-field.tsx';
import { useSaidWords } from '../../ui/ledger/said-words.tsx';
import { Section } from '../../ui/section.tsx';
import { Tag } from '../../ui/tag.tsx';
import { answerQuestion } from './answer-question.action.ts';

interface QuestionsProps {
  readonly programme: string;
  readonly zone: string;
  readonly names: Readonly<Record<string, string>>;
}

/** What somebody at the desk asks about entries of mine, and where I answer: one at a time, the oldest first. */
export async function QuestionsToMe({ programme, zone, names }: QuestionsProps) {
  const [questions, { home: said }, t] = await Promise.all([read(apiOf(programme, 'questions'), z.array(Question)), getMessages(), getTranslations('home')]);
  const [question] = questions;
  if (!question) return null;
  return (
    <Section heading={said.questions} lead={said.questionsLead}>
      <div className="card grid gap-3 rounded-lg border-2 border-on-straw bg-sheet p-5">
        <Asked programme={programme} zone={zone} names={names} question={question} />
        <ActionForm key={question.id} action={answerQuestion.bind(null, programme, question.id, newId())} labels={{ answer: said.answer }} send={said.sendAnswer}>
          <ProseField name="answer" rows={2} />
        </ActionForm>
      </div>
      {questions.length > 1 && <p className="mt-2 text-sm text-ink-soft">{t('moreQuestions', { n: questions.length - 1 })}</p>}
    </Section>
  );
}

function Asked({ programme, zone, names, question }: QuestionsProps & { readonly question: Question }) {
  const { entries } = useMessages();
  const t = useTranslations('home');
  const flags = useTranslations('entries.flags');
  const say = useSaidWords((id) => names[id]);
  const kinds: Readonly<Record<string, string>> = entries.kinds;
  const { batch, by, at, code, day, kind, said, n, question: asked } = question;
  return (
    <>
      <p><strong>{t('asks', { name: by })}</strong> “{asked}” <span className="text-sm text-ink-soft">{sayMoment(at, zone)}</span></p>
      <p className="border-l-4 border-lichen-deep pl-3">
        {sayDay(day)} – {kinds[kind] ?? kind}: {say(said)} {batch && <Tag href={pageOf(programme, 'batches', batch.id)}>{batch.label ?? `…${batch.id.slice(-6)}`}</Tag>}
        <span className="block text-sm text-ink-soft">{flags(code, { n: n ?? 0 })}</span>
      </p>
    </>
  );
}
