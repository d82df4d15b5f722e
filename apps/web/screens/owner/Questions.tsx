import { useState } from 'react';
import type { Answer, Question } from '#libs/contracts/common';
import type { OwnerPage } from '#libs/contracts/screens/owner';
import { Button } from '../../design/Button.js';
import { ErrorBar, Notice } from '../../design/Notice.js';
import { RadioChoice, yesNoUnknown } from '../../design/RadioChoice.js';
import { TextField } from '../../design/TextField.js';
import { useTellAnswers } from './queries.js';

const noteAsked: Partial<Record<Question, string>> = { medicine: 'Which, and since when?', ill: 'What have you seen, and when?', operated: 'Which operation, and when?', season: 'Since when, or when is it due?', pregnant: 'Since when?' };

/** After the dog has come in, the practice asks by mouth. */
export const questionsOpen = (page: OwnerPage) => page.visit !== null && page.knots.every((k) => k.state === 'toCome');

export function Questions({ page, first }: { page: OwnerPage; first: boolean }) {
  const tell = useTellAnswers();
  const [answers, setAnswers] = useState<Partial<Record<Question, Answer>>>({});
  const [notes, setNotes] = useState<Partial<Record<Question, string>>>({});
  const [missing, setMissing] = useState<string>();
  const { visit } = page;
  if (page.questions.length === 0 || !visit || !questionsOpen(page)) return null;
  const answerOf = (q: OwnerPage['questions'][number]) => answers[q.question] ?? q.answer ?? undefined;

  const send = () => {
    const open = page.questions.filter((q) => !answerOf(q));
    if (open.length) return setMissing(`Still open: ${open.map((q) => q.words).join(' ')} “Don’t know” is an answer too.`);
    if (Object.keys(answers).length === 0 && Object.keys(notes).length === 0) return setMissing('Nothing is changed. Your answers are already with the practice.');
    setMissing(undefined);
    const all = Object.fromEntries(page.questions.map((q) => [q.question, answerOf(q)]));
    tell.mutate({ visit: visit.id, answers: all, notes }, { onSuccess: () => (setAnswers({}), setNotes({})) });
  };

  return (
    <section aria-labelledby="questions" id="answers">
      <h2 id="questions">Questions about {page.dog.sex === 'female' ? 'her' : 'his'} health</h2>
      {page.questions.map((q) => (
        <div className="qq" key={q.question}>
          <RadioChoice label={q.words} value={answerOf(q)} onChange={(a) => a && setAnswers({ ...answers, [q.question]: a })} options={yesNoUnknown} size="tablet" />
          {answerOf(q) === 'unknown' && <p className="quiet">That is fine. The vet will ask you.</p>}
          {answerOf(q) === 'yes' && noteAsked[q.question] && (
            <TextField label={noteAsked[q.question] ?? ''} value={notes[q.question]} onChange={(note) => setNotes({ ...notes, [q.question]: note ?? '' })} help="If you like. A few words are enough." />
          )}
        </div>
      ))}
      {missing && <p className="err" role="alert">{missing}</p>}
      <ErrorBar error={tell.error} />
      {tell.isSuccess && !missing && <Notice>Your answers have reached the practice. You can change them until the visit begins.</Notice>}
      <Button kind={first ? 'elder' : 'plain'} onPress={send}>
        Send my answers
      </Button>
    </section>
  );
}
