import { requestClosed, requestExtended, requestNoted, requestVerified, type DataRequest } from '#libs/contracts/requests';
import { DateField } from '../../design/DateField.js';
import { RadioChoice } from '../../design/RadioChoice.js';
import { Sheet } from '../../design/Sheet.js';
import { TextField } from '../../design/TextField.js';
import { fullDay, momentAt } from '../../design/format.js';
import { t } from '../../words/t.js';
import { DoRequest } from './DoRequest.js';
import { eventWord, kindWords, nextOf } from './request-words.js';
import { WordsForm } from './WordsForm.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { named } from '../../words/named.js';

const outcomes = [{ id: 'done', name: 'Done' }, { id: 'refused', name: 'Refused' }] as const satisfies readonly { id: string; name: PageSentence }[];

/** One request: who asks, how that was made sure of, by when it is answered, what was done. */
export function RequestSheet({ request, zone }: { request: DataRequest; zone: string }) {
  const { person, verified, closed } = request;
  const next = nextOf(request);
  const path = `/${request.id}`;
  return (
    <Sheet title={`${t(kindWords[request.kind].name)}: ${person.name}`} beside={closed ? t('closed') : request.overdue ? t('was due {day}', { day: fullDay(request.due) }) : t('answer by {day}', { day: fullDay(request.due) })}>
      <dl className="facts">
        <dt>{t('Asked')}</dt>
        <dd>
          {t('{day}: “{words}”', { day: fullDay(request.received), words: request.asked })}
        </dd>
        <dt>{t('Person')}</dt>
        <dd>{person.erased ? t('Erased; nothing is known of them any more') : [person.name, person.email, person.phone].filter(Boolean).join(', ')}</dd>
        <dt>{t('Made sure of')}</dt>
        <dd>{verified ? `${verified.how} (${verified.by}, ${momentAt(verified.at, zone)})` : t('Not yet. Until then nothing is handed out, changed or erased.')}</dd>
        {request.restricted && (
          <>
            <dt>{t('Restricted')}</dt>
            <dd>{t('Kept and not used: mail to this person waits, except what keeps a dog safe.')}</dd>
          </>
        )}
      </dl>
      <div className="request-do">
        {next === 'verify' && (
          <WordsForm kind="ink" path={`${path}/verified`} opens={t('Say how you made sure')} saves={t('Keep this')} schema={requestVerified}>
            {(entry) => <TextField label={t('How you made sure that it is this person')} lines={2} help={t('For example: called back on the number in the register; looked at a passport at the desk.')} {...entry.field('how')} />}
          </WordsForm>
        )}
        {next === 'act' && <DoRequest request={request} />}
        {next === 'close' && request.kind === 'access' && <DoRequest request={request} />}
        {!closed && (
          <div className="acts">
            <WordsForm path={`${path}/closed`} kind={next === 'close' ? 'ink' : 'plain'} opens={t('Close it')} saves={t('Close this request')} schema={requestClosed} start={next === 'close' ? { outcome: 'done' } : { outcome: 'refused' }}>
              {(entry) => (
                <>
                  <RadioChoice label={t('Outcome')} options={named(outcomes)} {...entry.field('outcome')} />
                  <TextField label={t('What was done, or why not')} lines={2} {...entry.field('words')} />
                </>
              )}
            </WordsForm>
            {!request.overdue && request.due < request.latest && (
              <WordsForm path={`${path}/extended`} opens={t('Take more time')} saves={t('Take this time')} schema={requestExtended} start={{ until: request.latest }}>
                {(entry) => (
                  <>
                    <DateField label={t('Answer by')} help={t('No later than {latest}. Tell the person before {due}.', { latest: fullDay(request.latest), due: fullDay(request.due) })} {...entry.field('until')} />
                    <TextField label={t('Why, as it was told to the person')} lines={2} {...entry.field('why')} />
                  </>
                )}
              </WordsForm>
            )}
            <WordsForm path={`${path}/noted`} opens={t('Write a note')} saves={t('Keep this note')} schema={requestNoted}>
              {(entry) => <TextField label={t('Note')} lines={2} {...entry.field('words')} />}
            </WordsForm>
          </div>
        )}
        {request.restricted && (
          <WordsForm path={`${path}/restriction-lifted`} opens={t('Lift the restriction')} saves={t('Lift it')} schema={requestNoted}>
            {(entry) => <TextField label={t('Why it ends')} lines={2} {...entry.field('words')} />}
          </WordsForm>
        )}
      </div>
      {request.events.length > 0 && (
        <ul className="request-events small">
          {request.events.map((e, i) => (
            <li key={`${e.at}${i}`}>
              <span className="quiet num">{momentAt(e.at, zone)}</span> {eventWord(e.type)}
              {e.until && ` ${t('until {day}', { day: fullDay(e.until) })}`}: {e.words} <span className="quiet">{e.by}</span>
            </li>
          ))}
        </ul>
      )}
    </Sheet>
  );
}
