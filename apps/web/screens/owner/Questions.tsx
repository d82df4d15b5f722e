import { useState } from 'react';
import type { Answer, Question } from '#libs/contracts/common';
import type { ScreenSentence } from '#libs/words/de/screen';
import type { OwnerPage } from '#libs/contracts/screens/owner';
import { Button } from '../../design/Button.js';
import { ErrorBar, Notice } from '../../design/Notice.js';
import { pronouns } from './pronouns.js';
import { RadioChoice, yesNoUnknown } from '../../design/RadioChoice.js';
import { TextField } from '../../design/TextField.js';
import { useWords } from '../../words/Speak.js';
import { useTellAnswers } from './queries.js';

const noteAsked: Partial<Record<Question, ScreenSentence>> = { medicine: 'Which, and since when?', ill: 'What have you seen, and when?', operated: 'Which operation, and when?', season: 'Since when, or when is it due?', pregnant: 'Since when?' };

/** After the dog has come in, the practice asks by mouth. */
export const questionsOpen = (page: OwnerPage) => page.visit !== null && page.knots.every((k) => k.state === 'toCome');

export function Questions({ page, first }: { page: OwnerPage; first: boolean }) {
  const t = useWords();
  const tell = useTellAnswers();
  const [answers, setAnswers] = useState<Partial<Record<Question, Answer>>>({});
  const [notes, setNotes] = useState<Partial<Record<Question, string>>>({});
  const [missing, setMissing] = useState<string>();
  const { visit } = page;
  if (page.questions.length === 0 || !visit || !questionsOpen(page)) return null;
  const note = (question: Question) => (noteAsked[question] ? t(noteAsked[question]) : '');
  const answerOf = (q: OwnerPage['questions'][number]) => answers[q.question] ?? q.answer ?? undefined;

  const send = () => {
    const open = page.questions.filter((q) => !answerOf(q));
    if (open.length) return setMissing(t('Still open: {questions} “Don’t know” is an answer too.', { questions: open.map((q) => q.words).join(' ') }));
    if (Object.keys(answers).length === 0 && Object.keys(notes).length === 0) return setMissing(t('Nothing is changed. Your answers are already with the practice.'));
    setMissing(undefined);
    const all = Object.fromEntries(page.questions.map((q) => [q.question, answerOf(q)]));
    tell.mutate({ visit: visit.id, answers: all, notes }, { onSuccess: () => (setAnswers({}), setNotes({})) });
  };

  return (
    <section aria-labelledby="questions" id="answers">
      <h2 id="questions">{t('Questions about {his} health', pronouns(page.dog))}</h2>
      {page.questions.map((q) => (
        <div className="qq" key={q.question}>
          <RadioChoice label={q.words} value={answerOf(q)} onChange={(a) => a && setAnswers({ ...answers, [q.question]: a })} options={yesNoUnknown} size="tablet" />
          {answerOf(q) === 'unknown' && <p className="quiet">{t('That is fine. The vet will ask you.')}</p>}
          {answerOf(q) === 'yes' && note(q.question) && (
            <TextField label={note(q.question)} value={notes[q.question]} onChange={(written) => setNotes({ ...notes, [q.question]: written ?? '' })} help={t('If you like. A few words are enough.')} />
          )}
        </div>
      ))}
      {missing && <p className="err" role="alert">{missing}</p>}
      <ErrorBar error={tell.error} />
      {tell.isSuccess && !missing && <Notice>{t('Your answers have reached the practice. You can change them until the visit begins.')}</Notice>}
      <Button kind={first ? 'elder' : 'plain'} onPress={send}>
        {t('Send my answers')}
      </Button>
    </section>
  );
}
