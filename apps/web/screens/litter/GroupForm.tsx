import { useRef, useState, type ReactNode } from 'react';
import { useBookGroup, useGroupOptions } from '../../api/groups.js';
import { Checkbox } from '../../design/Checkboxes.js';
import { DateField } from '../../design/DateField.js';
import { Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { NumberField } from '../../design/NumberField.js';
import { Select } from '../../design/Select.js';
import { addDays } from '../../design/format.js';
import { focusFirstWrong } from '../../entry/EntryForm.js';
import { Questions } from '../../questions/Questions.js';
import { useCtrlEnter } from '../../shell/use-ctrl-enter.js';
import { t } from '../../words/t.js';
import { AcceptPart } from '../booking/AcceptPart.js';
import { AdvicePart } from '../booking/AdvicePart.js';
import { withUsualPeople } from '../booking/booking-draft.js';
import { PeoplePart } from '../booking/PeoplePart.js';
import { StudiesPart } from '../booking/StudiesPart.js';
import { DogsPart } from './DogsPart.js';
import { GroupSide } from './GroupSide.js';
import { emptyGroup, gapsIn, groupOf, timesOf, type GroupDraft } from './group-draft.js';
import { TimesPart } from './TimesPart.js';
import { rolesOf } from '../../dog-entry/person-roles.js';

type Props = { dogs: string[]; onDogs: (dogs: string[]) => void; onNewPups: () => void; onBooked: (group: string) => void };
/** While a day is being typed its year is not yet one. */
const askedDay = (day: string | undefined) => (day && day >= today() && day < '2200' ? day : addDays(today(), 1));
const today = () => new Date().toISOString().slice(0, 10);

export function GroupForm({ dogs, onDogs, onNewPups, onBooked }: Props) {
  const [entered, setEntered] = useState<GroupDraft>(emptyGroup);
  const [tried, setTried] = useState(false);
  const [key] = useState(() => crypto.randomUUID());
  const keys = useRef(new Map<string, string>());
  const form = useRef<HTMLFormElement>(null);
  const book = useBookGroup();
  const options = useGroupOptions(dogs.length > 0 ? { dogs, studies: entered.studies, day: askedDay(entered.day) } : null);
  const offered = dogs.length > 0 ? options.data : undefined;
  const draft: GroupDraft = { ...entered, dogs, ...(offered && usual({ ...entered, dogs }, offered.people)) };
  const change = (part: Partial<GroupDraft>) => setEntered((d) => ({ ...d, ...part }));
  const gaps = gapsIn(draft, offered, today());
  const state = stateOf(gaps[0]?.path);
  const error = (path: string) => (tried ? gaps.find((g) => g.path === path)?.says : undefined);
  const keyOf = (dog: string) => keys.current.get(dog) ?? keys.current.set(dog, crypto.randomUUID()).get(dog)!;

  const submit = () => {
    setTried(true);
    const group = gaps.length === 0 && offered && groupOf(draft, key, keyOf, offered);
    if (group && !book.isPending) book.mutate(group, { onSuccess: (g) => onBooked(g.id) });
    else requestAnimationFrame(() => focusFirstWrong(form.current));
  };
  useCtrlEnter(submit);

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
        <Part title={t('Dogs')} state={state('dogs')}>
          <DogsPart dogs={dogs} known={offered?.dogs ?? []} onDogs={onDogs} onNewPups={onNewPups} error={error('dogs')} />
        </Part>
        {offered && (
          <>
            <Part title={t('A litter?')} state={state('litter')}>
              <div className="form-row">
                <Checkbox label={t('These are pups of one litter')} value={draft.isLitter} onChange={(on) => change({ isLitter: on ?? false })} />
                {draft.isLitter && (
                  <>
                    <NumberField label={t('Born')} value={draft.born} onChange={(born) => change({ born })} error={error('born')} />
                    <NumberField label={t('Alive')} value={draft.alive} onChange={(alive) => change({ alive })} error={error('alive')} />
                    <Checkbox label={t('All that live are here: the whole litter')} value={draft.whole} onChange={(on) => change({ whole: on ?? false })} error={error('whole')} />
                  </>
                )}
              </div>
            </Part>
            <Part title={t('Studies, the same for each')} state={state('studies')}>
              <StudiesPart offered={offered.studies.map((s) => ({ ...s, problems: [], says: t('{views, plural, one {# view} other {# views}}', { views: s.views }) }))} chosen={draft.studies} onChange={(studies) => change({ studies })} error={error('studies')} />
            </Part>
            <Part title={t('Day and times')} state={state('times')}>
              <div className="stack">
                <DateField label={t('Day')} value={entered.day} onChange={(day) => change({ day, starts: {} })} error={error('day')} />
                <ErrorBar error={options.error} />
                {draft.studies.length > 0 && entered.day ? <TimesPart draft={draft} options={offered} times={timesOf(draft, offered)} onChange={(starts) => change({ starts })} error={error('times')} /> : <p className="quiet small">{t('The times of the day stand here once day and study are chosen.')}</p>}
              </div>
            </Part>
            <Part title={t('Asked on the phone')} state={state('questions')}>
              <p className="label">{t('Asked once for all. Where it differs between the dogs, “don’t know” is the answer: each dog’s own page asks again, and a vet decides dog by dog.')}</p>
              <Questions asked={offered.questions} answers={draft.answers} notes={draft.notes} onAnswer={(q, a) => change({ answers: { ...draft.answers, ...(a && { [q]: a }) } })} onNote={(q, n) => change({ notes: Object.fromEntries(Object.entries({ ...draft.notes, [q]: n }).filter(([, v]) => v !== undefined)) })} errors={tried ? Object.fromEntries(gaps.map((g) => [g.path, g.says])) : {}} />
            </Part>
            <Part title={t('People and advice')} state={state('people')}>
              <div className="stack">
                <p className="label">{t('Only people of all these dogs stand here.')}</p>
                <Select label={t('Who is calling')} options={offered.people.map((p) => ({ id: p.id, name: p.name, hint: rolesOf(p.roles) }))} value={draft.caller} onChange={(caller) => change({ caller })} error={error('caller')} />
                <PeoplePart people={offered.people} draft={draft} onChange={change} error={error} />
                <AdvicePart advice={offered.advice} value={draft.advice} onChange={(advice) => change({ advice })} />
              </div>
            </Part>
            <Part title={t('Estimate')} state={state('estimate')}>
              <AcceptPart people={offered.people} accepted={draft.accepted} onChange={(accepted) => change({ accepted })} />
            </Part>
          </>
        )}
        {!offered && <ErrorBar error={options.error} />}
        {dogs.length > 0 && !offered && !options.error && <Loading what={t('the day')} />}
      </ol>
      <GroupSide options={offered} draft={draft} gaps={tried ? gaps : []} failure={book.error} busy={book.isPending} />
    </form>
  );
}

function usual(draft: GroupDraft, people: Parameters<typeof withUsualPeople>[1]): Partial<GroupDraft> {
  const { payer, addressees, accepted } = withUsualPeople(draft, people);
  return { payer, addressees, accepted, caller: draft.caller ?? (people.find((p) => p.roles.includes('owner')) ?? people[0])?.id };
}

const parts: Record<string, string[]> = { dogs: ['dogs'], litter: ['born', 'alive', 'whole'], studies: ['studies'], times: ['day', 'times'], questions: [], people: ['caller', 'payer', 'addressees'], estimate: [] };
const order = Object.keys(parts);

/** The thread of the form: done up to the gap, open at it, to come after it. */
function stateOf(path: string | undefined) {
  const gap = path === undefined ? order.length : order.indexOf(order.find((part) => parts[part]!.includes(path)) ?? 'questions');
  return (part: string) => {
    const i = order.indexOf(part);
    return i === gap ? 'hold' : i > gap ? 'to' : i === gap - 1 && gap < order.length ? 'pre' : '';
  };
}

const Part = ({ title, state, children }: { title: string; state: string; children: ReactNode }) => (
  <li className={state}>
    <h2>{title}</h2>
    {children}
  </li>
);
