import { useRef, useState, type ReactNode } from 'react';
import type { Dog } from '#libs/contracts/register';
import { useBook, useBookingOptions } from '../../api/booking.js';
import { DateField } from '../../design/DateField.js';
import { Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { focusFirstWrong } from '../../entry/EntryForm.js';
import { Questions } from '../../questions/Questions.js';
import { useCtrlEnter } from '../../shell/use-ctrl-enter.js';
import { SlotPicker } from '../../slots/SlotPicker.js';
import { t } from '../../words/t.js';
import { AcceptPart } from './AcceptPart.js';
import { AdvicePart } from './AdvicePart.js';
import { bookingOf, emptyDraft, missingIn, withUsualPeople, type Draft, type Part } from './booking-draft.js';
import { BookingSide } from './BookingSide.js';
import { DogPart } from './DogPart.js';
import { PeoplePart } from './PeoplePart.js';
import { Repeats } from './Repeats.js';
import { StudiesPart } from './StudiesPart.js';

type Props = { dog: Dog | undefined; onDog: (dog: string | undefined) => void; onNewDog: () => void; onBooked: (order: string) => void };

/** One sheet, one call on the phone; it books everything or nothing. */
export function BookingForm({ dog, onDog, onNewDog, onBooked }: Props) {
  const [entered, setEntered] = useState<Draft>(emptyDraft);
  const [tried, setTried] = useState(false);
  const [key] = useState(() => crypto.randomUUID());
  const options = useBookingOptions(dog ? { dog: dog.id, studies: entered.studies, ...(entered.from && { from: entered.from }) } : null);
  const book = useBook();
  const form = useRef<HTMLFormElement>(null);
  const offered = options.data;
  const draft = offered ? withUsualPeople(entered, offered.people) : entered;
  const change = (part: Partial<Draft>) => setEntered((d) => ({ ...d, ...part }));
  const missing = missingIn(draft, dog?.id, offered);
  const error = (path: string) => (tried ? missing.find((m) => m.path === path)?.says : undefined);

  const submit = () => {
    setTried(true);
    const booking = missing.length === 0 && dog && offered && bookingOf(draft, key, dog.id, offered);
    if (booking && !book.isPending) book.mutate(booking, { onSuccess: (b) => onBooked(b.order) });
    // After the marks are drawn, the focus goes to the first of them.
    else requestAnimationFrame(() => focusFirstWrong(form.current));
  };

  useCtrlEnter(submit);

  const open = missing.find((m) => m.part !== 'dog')?.part ?? (draft.accepted.how ? undefined : 'estimate');
  const state = partStates(dog ? open : 'dog');
  return (
    <form
      ref={form}
      className="cols book"
      noValidate
      onSubmit={(e) => {
        e.preventDefault();
        submit();
      }}
    >
      <ol className="hang book-form sheet">
        <PartItem title={t('Dog')} state={state('dog')}>
          <DogPart dog={dog} onDog={onDog} onNew={onNewDog} error={error('dog')} />
          {offered && <Repeats repeats={offered.repeats} />}
        </PartItem>
        <PartItem title={t('Studies')} state={state('studies')}>
          <ErrorBar error={options.error} />
          {offered ? <StudiesPart offered={offered.studies} chosen={draft.studies} onChange={(studies) => change({ studies, slot: undefined })} error={error('studies')} /> : dog && !options.error ? <Loading what={t('the studies')} /> : null}
        </PartItem>
        <PartItem title={t('Day and time')} state={state('slot')}>
          {offered && (
            <div className="stack">
              <DateField label={t('Not before (may stay empty)')} value={draft.from} onChange={(from) => change({ from, slot: undefined })} />
              {draft.studies.length > 0 ? <SlotPicker slots={offered.slots.slice(0, 9)} value={draft.slot} onChange={(slot) => change({ slot })} error={error('slot')} /> : <p className="quiet small">{t('Free times stand here once a study is chosen.')}</p>}
            </div>
          )}
        </PartItem>
        <PartItem title={t('Asked on the phone')} state={state('questions')}>
          {offered && (
            <>
              <p className="label">{t('Read each one out. “Don’t know” is an answer: it books, and makes a hold for a vet.')}</p>
              <Questions asked={offered.questions} answers={draft.answers} notes={draft.notes} onAnswer={(q, a) => change({ answers: { ...draft.answers, ...(a && { [q]: a }) } })} onNote={(q, n) => change({ notes: Object.fromEntries(Object.entries({ ...draft.notes, [q]: n }).filter(([, v]) => v !== undefined)) })} errors={tried ? Object.fromEntries(missing.filter((m) => m.part === 'questions').map((m) => [m.path, m.says])) : {}} />
              {dog?.sex === 'male' && <p className="label">{t('Season, pregnancy and nursing are not asked of a male dog.')}</p>}
            </>
          )}
        </PartItem>
        <PartItem title={t('People and advice')} state={state('people')}>
          {offered && (
            <div className="stack">
              <PeoplePart people={offered.people} draft={draft} onChange={change} error={error} />
              <AdvicePart advice={offered.advice} value={draft.advice} onChange={(advice) => change({ advice })} />
            </div>
          )}
        </PartItem>
        <PartItem title={t('Estimate')} state={state('estimate')}>
          {offered && draft.studies.length > 0 && <AcceptPart people={offered.people} accepted={draft.accepted} onChange={(accepted) => change({ accepted })} />}
        </PartItem>
        <li className="to">
          <h2>{t('Book')}</h2>
          <p>{t('Confirmation with calendar file, the advice, and the link for consent go by mail to those who have an address.')}</p>
        </li>
      </ol>
      <BookingSide options={offered} draft={draft} missing={tried ? missing : []} failure={book.error} busy={book.isPending} />
    </form>
  );
}

const order: Part[] = ['dog', 'studies', 'slot', 'questions', 'people', 'estimate'];

/** The thread of the form: done up to the gap, open at it, to come after it. */
function partStates(open: Part | undefined) {
  const gap = open ? order.indexOf(open) : order.length;
  return (part: Part) => {
    const i = order.indexOf(part);
    return i < gap - 1 ? '' : i === gap - 1 ? (gap < order.length ? 'pre' : '') : i === gap ? 'hold' : 'to';
  };
}

const PartItem = ({ title, state, children }: { title: string; state: string; children: ReactNode }) => (
  <li className={state}>
    <h2>{title}</h2>
    {children}
  </li>
);
