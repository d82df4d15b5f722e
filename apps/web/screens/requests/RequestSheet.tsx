import { requestClosed, requestExtended, requestNoted, requestVerified, type DataRequest } from '#libs/contracts/requests';
import { DateField } from '../../design/DateField.js';
import { RadioChoice } from '../../design/RadioChoice.js';
import { Sheet } from '../../design/Sheet.js';
import { TextField } from '../../design/TextField.js';
import { fullDay, momentAt } from '../../design/format.js';
import { DoRequest } from './DoRequest.js';
import { eventWord, kindWords, nextOf } from './request-words.js';
import { WordsForm } from './WordsForm.js';

const outcomes = [{ id: 'done', name: 'Done' }, { id: 'refused', name: 'Refused' }] as const;

/** One request: who asks, how that was made sure of, by when it is answered, what was done. */
export function RequestSheet({ request, zone }: { request: DataRequest; zone: string }) {
  const { person, verified, closed } = request;
  const next = nextOf(request);
  const path = `/${request.id}`;
  return (
    <Sheet title={`${kindWords[request.kind].name}: ${person.name}`} beside={closed ? 'closed' : request.overdue ? `was due ${fullDay(request.due)}` : `answer by ${fullDay(request.due)}`}>
      <dl className="facts">
        <dt>Asked</dt>
        <dd>
          {fullDay(request.received)}: “{request.asked}”
        </dd>
        <dt>Person</dt>
        <dd>{person.erased ? 'Erased; nothing is known of them any more' : [person.name, person.email, person.phone].filter(Boolean).join(', ')}</dd>
        <dt>Made sure of</dt>
        <dd>{verified ? `${verified.how} (${verified.by}, ${momentAt(verified.at, zone)})` : 'Not yet. Until then nothing is handed out, changed or erased.'}</dd>
        {request.restricted && (
          <>
            <dt>Restricted</dt>
            <dd>Kept and not used: mail to this person waits, except what keeps a dog safe.</dd>
          </>
        )}
      </dl>
      <div className="request-do">
        {next === 'verify' && (
          <WordsForm kind="ink" path={`${path}/verified`} opens="Say how you made sure" saves="Keep this" schema={requestVerified}>
            {(entry) => <TextField label="How you made sure that it is this person" lines={2} help="For example: called back on the number in the register; looked at a passport at the desk." {...entry.field('how')} />}
          </WordsForm>
        )}
        {next === 'act' && <DoRequest request={request} />}
        {next === 'close' && request.kind === 'access' && <DoRequest request={request} />}
        {!closed && (
          <div className="acts">
            <WordsForm path={`${path}/closed`} kind={next === 'close' ? 'ink' : 'plain'} opens="Close it" saves="Close this request" schema={requestClosed} start={next === 'close' ? { outcome: 'done' } : { outcome: 'refused' }}>
              {(entry) => (
                <>
                  <RadioChoice label="Outcome" options={outcomes} {...entry.field('outcome')} />
                  <TextField label="What was done, or why not" lines={2} {...entry.field('words')} />
                </>
              )}
            </WordsForm>
            {!request.overdue && request.due < request.latest && (
              <WordsForm path={`${path}/extended`} opens="Take more time" saves="Take this time" schema={requestExtended} start={{ until: request.latest }}>
                {(entry) => (
                  <>
                    <DateField label="Answer by" help={`No later than ${fullDay(request.latest)}. Tell the person before ${fullDay(request.due)}.`} {...entry.field('until')} />
                    <TextField label="Why, as it was told to the person" lines={2} {...entry.field('why')} />
                  </>
                )}
              </WordsForm>
            )}
            <WordsForm path={`${path}/noted`} opens="Write a note" saves="Keep this note" schema={requestNoted}>
              {(entry) => <TextField label="Note" lines={2} {...entry.field('words')} />}
            </WordsForm>
          </div>
        )}
        {request.restricted && (
          <WordsForm path={`${path}/restriction-lifted`} opens="Lift the restriction" saves="Lift it" schema={requestNoted}>
            {(entry) => <TextField label="Why it ends" lines={2} {...entry.field('words')} />}
          </WordsForm>
        )}
      </div>
      {request.events.length > 0 && (
        <ul className="request-events small">
          {request.events.map((e, i) => (
            <li key={`${e.at}${i}`}>
              <span className="quiet num">{momentAt(e.at, zone)}</span> {eventWord(e.type)}
              {e.until && ` until ${fullDay(e.until)}`}: {e.words} <span className="quiet">{e.by}</span>
            </li>
          ))}
        </ul>
      )}
    </Sheet>
  );
}
