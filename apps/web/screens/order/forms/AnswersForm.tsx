import type { Answer, Question } from '#libs/contracts/common';
import { visitActions } from '#libs/contracts/actions/visit';
import { RadioChoice } from '../../../design/RadioChoice.js';
import { useEntry } from '../../../entry/use-entry.js';
import { Questions, questionsFor } from '../../../questions/Questions.js';
import { t } from '../../../words/t.js';
import { ActionEntryForm } from './ActionEntryForm.js';
import { visitOf, type FormProps } from './form-props.js';
import { optionWords } from './option-words.js';

const stages = () => (['booking', 'reminder', 'admission'] as const).map((id) => ({ id, name: optionWords(id) }));

export function AnswersForm(props: FormProps) {
  const visit = visitOf(props);
  const asked = questionsFor(props.screen.dog.sex);
  const entry = useEntry(visitActions.giveAnswers, { stage: visit?.step === 'admitted' ? 'admission' : visit?.day === props.screen.now.slice(0, 10) ? 'admission' : 'reminder', answers: {}, notes: {} });
  const answers: Partial<Record<Question, Answer>> = entry.values.answers ?? {};
  const notes: Partial<Record<Question, string>> = entry.values.notes ?? {};
  const missing = () => Object.fromEntries(asked.filter((a) => !answers[a.question]).map((a) => [`answers.${a.question}`, t('Yes, no or don’t know.')]));
  return (
    <ActionEntryForm entry={entry} props={props} also={missing}>
      <RadioChoice label={t('Asked at')} options={stages()} {...entry.field('stage')} />
      <p className="label">{t('Read each one out. “Don’t know” is an answer: it makes a hold for a vet.')}</p>
      <Questions
        asked={asked}
        answers={answers}
        notes={notes}
        onAnswer={(q, a) => entry.set('answers', { ...answers, [q]: a })}
        onNote={(q, n) => entry.set('notes', without(notes, q, n))}
        errors={Object.fromEntries(asked.map((a) => [a.question, entry.error(`answers.${a.question}`)]))}
      />
    </ActionEntryForm>
  );
}

function without(notes: Partial<Record<Question, string>>, question: Question, note: string | undefined) {
  const { [question]: _, ...rest } = notes;
  return note === undefined ? rest : { ...rest, [question]: note };
}
