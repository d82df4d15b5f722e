import { saidOfLine, type BillLine, type CentreBill } from '#libs/contracts/centre-bills';
import { Select } from '../../design/Select.js';
import { TextField } from '../../design/TextField.js';
import { fullDay } from '../../design/format.js';
import { t } from '../../words/t.js';
import { AddForm } from '../practice/AddForm.js';
import { useSayOf } from './queries.js';

const [asMatched, asDisputed, asUndone] = saidOfLine.options;

/** What a person may say about a line, as it stands. */
export function LineForms({ bill, line }: { bill: CentreBill; line: BillLine }) {
  const say = useSayOf(bill.id, line.id);
  const key = crypto.randomUUID();
  const said = line.byHand || line.state === 'disputed';
  return (
    <div className="line-forms">
      {line.state === 'unmatched' && (
        <AddForm opens={t('Match line {place}', { place: line.place })} saves={t('It is for this study')} schema={asMatched} start={{ says: 'matched', key }} add={say}>
          {(entry) => (
            <>
              <Select label={t('Study that was sent to this centre and is in no bill')} options={bill.mayBe.map((s) => ({ id: s.study, name: `${s.dog}, ${s.name}`, hint: t('{order}, sent {day}', { order: s.accession, day: fullDay(s.sentOn) }) }))} {...entry.field('study')} />
              <TextField label={t('Why (may stay empty)')} {...entry.field('words')} />
            </>
          )}
        </AddForm>
      )}
      {line.state !== 'disputed' && (
        <AddForm opens={t('Dispute line {place}', { place: line.place })} saves={t('Dispute it')} schema={asDisputed} start={{ says: 'disputed', key }} add={say}>
          {(entry) => <TextField label={t('Why it is not owed')} lines={2} {...entry.field('words')} />}
        </AddForm>
      )}
      {said && (
        <AddForm opens={t('Take back what was said of line {place}', { place: line.place })} saves={t('Take it back')} schema={asUndone} start={{ says: 'undone', key }} add={say}>
          {(entry) => <TextField label={t('Why')} lines={2} {...entry.field('words')} />}
        </AddForm>
      )}
    </div>
  );
}
