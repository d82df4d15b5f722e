import { studyActions } from '#libs/contracts/actions/study';
import { CheckboxGroup } from '../../../design/Checkboxes.js';
import { RadioChoice } from '../../../design/RadioChoice.js';
import { Select } from '../../../design/Select.js';
import { timeAt } from '../../../design/format.js';
import { useEntry, type Errors } from '../../../entry/use-entry.js';
import { Film } from '../record/Film.js';
import { ActionEntryForm } from './ActionEntryForm.js';
import { choicesFor, studyOf, type FormProps } from './form-props.js';

const verdicts = [
  { id: 'accept' as const, name: 'Accept', key: 'a' },
  { id: 'retake' as const, name: 'Retake', key: 'r' },
];

/** The picture first; what is looked at beside it. A retake is taken while the dog still sleeps, or not at all. */
export function JudgeForm(props: FormProps) {
  const { screen } = props;
  const study = studyOf(props);
  const films = screen.exposures.filter((e) => !e.disowned && e.serves.includes(props.next.on.id));
  const open = films.findLast((e) => !e.verdicts.some((v) => v.study === props.next.on.id)) ?? films.at(-1);
  const entry = useEntry(studyActions.judgeView, { exposure: open?.id, reasons: [] });
  const film = films.find((e) => e.id === entry.values.exposure);
  const checklist = study?.views.find((v) => v.view === film?.view)?.checklist ?? [];
  const offered = choicesFor(screen, 'reasons');
  const ofThisView = offered.filter((r) => checklist.includes(r.name));
  const reasons = ofThisView.length > 0 ? ofThisView : offered.length > 0 ? offered : checklist.map((c) => ({ id: c.slice(0, 60), name: c }));
  const missing = (): Errors => (entry.values.verdict === 'retake' && !entry.values.reasons?.length ? { reasons: 'Why a retake? More than one may be chosen.' } : {});
  return (
    <div className="judge">
      <div className="judge-film">{film ? <Film order={screen.id} exposure={film} large /> : <p className="quiet">There is no film of this study to judge.</p>}</div>
      <ActionEntryForm entry={entry} props={props} size="tablet" label="Keep this verdict" also={missing}>
        {films.length > 1 && <Select label="Film" options={films.map((f) => ({ id: f.id, name: `${f.viewName}, attempt ${f.attempt}`, hint: timeAt(f.at, screen.practice.zone) }))} {...entry.field('exposure')} />}
        <div>
          <h3>What is looked at</h3>
          <ul className="lines small">
            {checklist.map((c) => (
              <li key={c}>{c}</li>
            ))}
          </ul>
        </div>
        <RadioChoice label="This picture" size="tablet" options={verdicts} {...entry.field('verdict')} />
        {entry.values.verdict === 'retake' && <CheckboxGroup label="Why a retake" options={reasons} {...entry.field('reasons')} />}
        <p className="label">All films are sent, this one too.</p>
      </ActionEntryForm>
    </div>
  );
}
