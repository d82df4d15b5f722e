import { newReader, type PracticeScreen } from '#libs/contracts/register';
import { Empty } from '../../design/Empty.js';
import { Notice } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { TextField } from '../../design/TextField.js';
import { list, money, plural } from '../../design/format.js';
import { AddForm } from './AddForm.js';
import { CentreForm } from './CentreForm.js';
import { ClosuresOf } from './ClosuresOf.js';
import { useAddReader, useClosures } from './queries.js';

type Centre = PracticeScreen['centres'][number];

export function CentresSheet({ screen, edits, hears }: { screen: PracticeScreen; edits: boolean; hears: boolean }) {
  const closures = useClosures();
  const names = (centre: Centre) => list(centre.protocols.map((code) => screen.protocols.find((p) => p.code === code)?.name ?? code));
  return (
    <Sheet title="Centres">
      {screen.centres.length === 0 && <Empty title="No grading centre yet">Films are read by somebody with no stake in the outcome. Enter who that is.</Empty>}
      {screen.centres.map((centre) => (
        <div key={centre.id} className="centre">
          <h3>{centre.name.includes(centre.place) ? centre.name : `${centre.name}, ${centre.place}`}</h3>
          <p>Reads {names(centre)}, for {money(centre.feeMinor, screen.prices.currency)} a study.</p>
          <p className="small quiet">
            {centre.email}. Says within {plural(centre.ackDays, 'working day', 'working days')} that films have come; the result is due {plural(centre.resultDays, 'working day', 'working days')} later. Up to {plural(centre.reminders, 'reminder', 'reminders')}, one every {plural(centre.remindEvery, 'working day', 'working days')}; then a person takes it over. Owners may ask for a second reading within {plural(centre.appealDays, 'day', 'days')}.
          </p>
          <ClosuresOf centre={centre} rows={(closures.data?.rows ?? []).filter((r) => r.centre === centre.id)} hears={hears} />
          {edits && <ReaderForm centre={centre} />}
        </div>
      ))}
      {edits && <CentreForm screen={screen} />}
    </Sheet>
  );
}

function ReaderForm({ centre }: { centre: Centre }) {
  const add = useAddReader(centre.id);
  return (
    <>
      {add.isSuccess && <Notice>A mail went to {centre.email}: behind its link {add.variables.name} chooses a password, and can then sign in.</Notice>}
      <AddForm opens="Add a reader" saves="Add this reader" schema={newReader} add={add}>
        {(entry) => (
          <>
            <TextField label="Name" {...entry.field('name')} autoComplete="off" />
            <TextField label="Mail address" type="email" {...entry.field('email')} autoComplete="off" />
          </>
        )}
      </AddForm>
    </>
  );
}
