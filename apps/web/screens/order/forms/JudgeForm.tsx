import { memo } from 'react';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { studyActions } from '#libs/contracts/actions/study';
import { CheckboxGroup } from '../../../design/Checkboxes.js';
import { RadioChoice } from '../../../design/RadioChoice.js';
import { Select, type SaidOption } from '../../../design/Select.js';
import { timeAt } from '../../../design/format.js';
import { useEntry, type Entry, type Errors } from '../../../entry/use-entry.js';
import { useShortcut } from '../../../shell/use-shortcut.js';
import { t } from '../../../words/t.js';
import { MarkFindings } from '../marking/MarkFindings.js';
import { MarkList } from '../marking/MarkList.js';
import { MarkPicture } from '../marking/MarkPicture.js';
import { useMarks } from '../marking/use-marks.js';
import { useSavedMarks } from '../marking/use-saved-marks.js';
import '../marking/marking.css';
import { Film } from '../record/Film.js';
import { ActionEntryForm } from './ActionEntryForm.js';
import { choicesFor, studyOf, type FormProps } from './form-props.js';

const verdicts: readonly SaidOption<'accept' | 'retake'>[] = [
  { id: 'accept', name: 'Accept', byLetter: true },
  { id: 'retake', name: 'Retake', byLetter: true },
];

type Judged = { props: FormProps; entry: Entry<typeof studyActions.judgeView>; films: OrderScreen['exposures']; film: OrderScreen['exposures'][number] | undefined };

/** The picture first; what is looked at beside it. A retake is taken while the dog still sleeps, or not at all. */
export function JudgeForm(props: FormProps) {
  const { screen } = props;
  const films = screen.exposures.filter((e) => !e.disowned && e.serves.includes(props.next.on.id));
  const open = films.findLast((e) => !e.verdicts.some((v) => v.study === props.next.on.id)) ?? films.at(-1);
  const entry = useEntry(studyActions.judgeView, { exposure: open?.id, reasons: [] });
  const film = films.find((e) => e.id === entry.values.exposure);
  return <JudgeFilm key={film?.id} props={props} entry={entry} films={films} film={film} />;
}

function JudgeFilm(judged: Judged) {
  const { props, film } = judged;
  const { screen } = props;
  const marked = useMarks(film);
  const marking = film !== undefined && film.previewable && film.picture !== null && marked.slots.length > 0 && screen.next.some((n) => n.action === 'markFilm' && n.on.id === film.visit && n.yours && n.allowed);
  const unread = useSavedMarks(screen.id, marking ? film : undefined, marked.change);
  return (
    <div className="judge">
      <div className="judge-film">
        {marking ? (
          <>
            <MarkList marked={marked} />
            <MarkPicture order={screen.id} film={film} picture={film.picture!} marked={marked} />
          </>
        ) : film ? (
          <Film order={screen.id} exposure={film} large />
        ) : (
          <p className="quiet">{t('There is no film of this study to judge.')}</p>
        )}
      </div>
      <div>
        {marking && <MarkFindings screen={screen} film={film} marked={marked} unread={unread} />}
        <Verdict {...judged} />
      </div>
    </div>
  );
}

/** Not drawn anew while a point follows a finger. */
const Verdict = memo(function Verdict({ props, entry, films, film }: Judged) {
  const { screen } = props;
  const study = studyOf(props);
  const verdict = entry.field('verdict');
  useShortcut('a', () => verdict.onChange('accept'));
  useShortcut('r', () => verdict.onChange('retake'));
  const checklist = study?.views.find((v) => v.view === film?.view)?.checklist ?? [];
  const offered = choicesFor(screen, 'reasons');
  const ofThisView = offered.filter((r) => checklist.includes(r.name));
  const reasons = ofThisView.length > 0 ? ofThisView : offered.length > 0 ? offered : checklist.map((c) => ({ id: c.slice(0, 60), name: c }));
  const missing = (): Errors => (entry.values.verdict === 'retake' && !entry.values.reasons?.length ? { reasons: t('Why a retake? More than one may be chosen.') } : {});
  return (
    <ActionEntryForm entry={entry} props={props} size="tablet" label={t('Keep this verdict')} also={missing}>
      {films.length > 1 && <Select label={t('Film')} options={films.map((f) => ({ id: f.id, name: t('{view}, attempt {attempt}', { view: f.viewName, attempt: f.attempt }), hint: timeAt(f.at, screen.practice.zone) }))} {...entry.field('exposure')} />}
      <div>
        <h3>{t('What is looked at')}</h3>
        <ul className="lines small">
          {checklist.map((c) => (
            <li key={c}>{c}</li>
          ))}
        </ul>
      </div>
      <RadioChoice label={t('This picture')} size="tablet" options={verdicts} {...verdict} />
      {entry.values.verdict === 'retake' && <CheckboxGroup label={t('Why a retake')} options={reasons} {...entry.field('reasons')} />}
      <p className="label">{t('All films are sent, this one too.')}</p>
    </ActionEntryForm>
  );
});
