import { Link } from '@tanstack/react-router';
import { newReader, type PracticeScreen } from '#libs/contracts/register';
import { Empty } from '../../design/Empty.js';
import { Notice } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { TextField } from '../../design/TextField.js';
import { list, money } from '../../design/format.js';
import { t } from '../../words/t.js';
import { AddForm } from './AddForm.js';
import { CentreForm } from './CentreForm.js';
import { ChannelOf } from './ChannelOf.js';
import { ClosuresOf } from './ClosuresOf.js';
import { useAddReader, useChannels, useClosures } from './queries.js';

type Centre = PracticeScreen['centres'][number];

export function CentresSheet({ screen, edits, hears }: { screen: PracticeScreen; edits: boolean; hears: boolean }) {
  const closures = useClosures();
  const channels = useChannels();
  const names = (centre: Centre) => list(centre.protocols.map((code) => screen.protocols.find((p) => p.code === code)?.name ?? code));
  return (
    <Sheet title={t('Centres')}>
      {screen.centres.length === 0 && <Empty title={t('No grading centre yet')}>{t('Films are read by somebody with no stake in the outcome. Enter who that is.')}</Empty>}
      {screen.centres.map((centre) => (
        <div key={centre.id} className="centre">
          <h3>{centre.name.includes(centre.place) ? centre.name : `${centre.name}, ${centre.place}`}</h3>
          <p>{t('Reads {studies}, for {fee} a study.', { studies: names(centre), fee: money(centre.feeMinor, screen.prices.currency) })}</p>
          <p className="small quiet">
            {t('{email}. Says within {ackDays, plural, one {# working day} other {# working days}} that films have come; the result is due {resultDays, plural, one {# working day} other {# working days}} later. Up to {reminders, plural, one {# reminder} other {# reminders}}, one every {remindEvery, plural, one {# working day} other {# working days}}; then a person takes it over. Owners may ask for a second reading within {appealDays, plural, one {# day} other {# days}}.', { email: centre.email, ackDays: centre.ackDays, resultDays: centre.resultDays, reminders: centre.reminders, remindEvery: centre.remindEvery, appealDays: centre.appealDays })}
          </p>
          <ChannelOf centre={centre} channel={(channels.data?.rows ?? []).find((r) => r.centre === centre.id)} edits={edits} zone={screen.practice.zone} />
          <ClosuresOf centre={centre} rows={(closures.data?.rows ?? []).filter((r) => r.centre === centre.id)} hears={hears} />
          {edits && <ReaderForm centre={centre} />}
        </div>
      ))}
      {edits && <CentreForm screen={screen} />}
      {edits && <p className="small"><Link to="/results-in">{t('Readings that come in, and the keys of the centres’ computers')}</Link></p>}
    </Sheet>
  );
}

function ReaderForm({ centre }: { centre: Centre }) {
  const add = useAddReader(centre.id);
  return (
    <>
      {add.isSuccess && <Notice>{t('A mail went to {email}: behind its link {name} chooses a password, and can then sign in.', { email: centre.email, name: add.variables.name })}</Notice>}
      <AddForm opens={t('Add a reader')} saves={t('Add this reader')} schema={newReader} add={add}>
        {(entry) => (
          <>
            <TextField label={t('Name')} {...entry.field('name')} autoComplete="off" />
            <TextField label={t('Mail address')} type="email" {...entry.field('email')} autoComplete="off" />
          </>
        )}
      </AddForm>
    </>
  );
}
