import type { ScreenSentence } from '#libs/words/de/screen';
import type { OwnerPage } from '#libs/contracts/screens/owner';
import { longDay } from '../../design/format.js';
import { useWords } from '../../words/Speak.js';
import { Told } from '../../words/Told.js';
import { pronouns } from './pronouns.js';

const drawn = { done: '', here: 'now', toCome: 'to' } as const;
const heard = { done: 'done', here: 'now', toCome: 'to come' } as const;
const written: Record<string, ScreenSentence> = { here: 'Here, weighed, examined', asleep: 'Asleep', pictures: 'Pictures taken', awake: 'Awake again', home: 'Home' };

/** The visit as the owner knows it, hanging: five knots, and before them what we wait for. */
export function Roads({ page }: { page: OwnerPage }) {
  const waits = page.toDo.length > 0;
  const begun = page.knots.some((k) => k.state !== 'toCome');
  const before = waits && !begun;
  const t = useWords();
  if (!begun && !page.visit) return null;
  return (
    <ol className="hang" aria-label={t('How far {his} visit is', pronouns(page.dog))}>
      {!begun && (
        <li className={before ? 'pre' : 'bnext'}>
          {t('Booked')} {page.visit && <span className="by">{t('for {day}, {start}', { day: longDay(page.visit.day, t.language), start: page.visit.start })}</span>}
        </li>
      )}
      {before && (
        <li className="hold">
          <span className="held-words">
            <Told text={t('**Your answers.** {count, plural, one {One thing is} other {# things are}} asked of you, below.', { count: page.toDo.length })} />
          </span>
        </li>
      )}
      {page.knots.map((knot) => (
        <li key={knot.name} className={drawn[knot.state]} aria-current={knot.state === 'here' ? 'step' : undefined}>
          {t(written[knot.name]!)}
          <span className="vh">, {t(heard[knot.state])}</span>
        </li>
      ))}
    </ol>
  );
}
