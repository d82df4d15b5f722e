import { questionWords, type Answer, type Question } from '#libs/contracts/common';
import { RadioChoice, yesNoUnknown } from '../design/RadioChoice.js';
import { TextField } from '../design/TextField.js';
import { t } from '../words/t.js';
import { Told } from '../words/Told.js';

type Asked = { question: Question; words: string };
type Props = {
  asked: readonly Asked[];
  answers: Partial<Record<Question, Answer>>;
  notes: Partial<Record<Question, string>>;
  onAnswer: (question: Question, answer: Answer | undefined) => void;
  onNote: (question: Question, note: string | undefined) => void;
  errors?: Partial<Record<Question, string>>;
};

/** The safety questions, read out one by one; anything but "no" may carry a note for the vet. */
export function Questions({ asked, answers, notes, onAnswer, onNote, errors }: Props) {
  return (
    <ul className="qs">
      {asked.map(({ question, words }) => {
        const answer = answers[question];
        return (
          <li key={question}>
            <div>
              <span aria-hidden="true">{words}</span>
              {answer === 'unknown' && (
                <span className="label block">
                  <Told text={t('**Hold.** A vet asks and decides, before the dog sleeps.')} strong="elder" />
                </span>
              )}
            </div>
            <RadioChoice label={words} labelHidden options={yesNoUnknown} value={answer} onChange={(a) => onAnswer(question, a)} error={errors?.[question]} />
            {(answer === 'yes' || answer === 'unknown') && <TextField label={t('Note for the vet')} value={notes[question]} onChange={(n) => onNote(question, n)} />}
          </li>
        );
      })}
    </ul>
  );
}

/** Season, pregnancy and nursing are not asked of a male dog. */
export const questionsFor = (sex: 'male' | 'female'): Asked[] =>
  (Object.keys(questionWords) as Question[]).filter((q) => sex === 'female' || !['season', 'pregnant', 'nursing'].includes(q)).map((question) => ({ question, words: t(questionWords[question]) }));
