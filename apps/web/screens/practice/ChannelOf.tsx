import { canBeTried, channelKinds, channelNames, newChannel, type Channels } from '#libs/contracts/dispatch';
import type { PracticeScreen } from '#libs/contracts/register';
import { Button } from '../../design/Button.js';
import { ErrorBar } from '../../design/Notice.js';
import { Select } from '../../design/Select.js';
import { TextField } from '../../design/TextField.js';
import { momentAt } from '../../design/format.js';
import { t } from '../../words/t.js';
import { AddForm } from './AddForm.js';
import { lineWords } from './line-words.js';
import { useChannels, useTryChannel } from './queries.js';

type Props = { centre: PracticeScreen['centres'][number]; channel: Channels['rows'][number] | undefined; edits: boolean; zone: string };

/** By which way this practice's films go to a centre. A password is written and not shown again, so each change asks for it anew. */
export function ChannelOf({ centre, channel, edits, zone }: Props) {
  const { add } = useChannels(centre.id);
  const kinds = channelKinds.map((kind) => ({ id: kind, name: t.known(channelNames[kind]) }));
  const start = channel ? { kind: channel.kind, address: channel.address ?? undefined, bucket: channel.bucket ?? undefined, region: channel.region ?? undefined, account: channel.account ?? undefined } : { kind: 'link' as const };
  return (
    <>
      <p>
        <b>{t('Films go by:')}</b> {t.known(channelNames[channel?.kind ?? 'link'])}
        {channel?.address && <>, <span className="num">{channel.address}</span></>}
        {channel?.bucket && <>, {channel.bucket}</>}.{' '}
        {channel && <span className="small quiet">{channel.secret && t('With a password.')} {t('Entered by {name}, {at}.', { name: channel.byName, at: momentAt(channel.at, zone) })}</span>}
      </p>
      {channel?.secretLost && <p className="err"><b>{t('The password cannot be read any more.')}</b> {t('It was sealed with a key that this server does not have. No film goes this way until it is entered anew, or whoever runs the server brings the key back.')}</p>}
      {channel && canBeTried(channel.kind) && <Trial channel={channel} centre={centre} edits={edits} zone={zone} />}
      {edits && (
        <AddForm opens={t('Change how films go there')} saves={t('Send this way from now on')} schema={newChannel} start={start} add={add}>
          {(entry) => {
            const { kind } = entry.values;
            return (
              <>
                <Select label={t('Films go by')} options={kinds} {...entry.field('kind')} />
                {kind === 'dicomweb' && (
                  <>
                    <TextField label={t('Address of the DICOMweb service')} {...entry.field('address')} autoComplete="off" help={t('Such as https://archive.centre.example/dicom-web. The part with “studies” is added by the program.')} />
                    <TextField label={t('Name to sign in with')} {...entry.field('account')} autoComplete="off" help={t('Empty: what is entered below is sent as a token, or nothing is sent.')} />
                    <TextField label={t('Password or token')} type="password" {...entry.field('secret')} autoComplete="new-password" help={t('It is not shown again; with the next change it has to be entered anew.')} />
                  </>
                )}
                {kind === 'objectStore' && (
                  <>
                    <TextField label={t('Address of the object store')} {...entry.field('address')} autoComplete="off" help={t('Such as https://objects.centre.example, without the bucket.')} />
                    <div className="form-row">
                      <TextField label={t('Bucket')} {...entry.field('bucket')} autoComplete="off" />
                      <TextField label={t('Region')} {...entry.field('region')} autoComplete="off" help={t('Empty unless the centre names one.')} />
                    </div>
                    <TextField label={t('Key id')} {...entry.field('account')} autoComplete="off" />
                    <TextField label={t('Secret key')} type="password" {...entry.field('secret')} autoComplete="new-password" help={t('It is not shown again; with the next change it has to be entered anew.')} />
                  </>
                )}
              </>
            );
          }}
        </AddForm>
      )}
    </>
  );
}

/** Whether the line holds, before a film depends on it. */
function Trial({ channel: { kind, address, trial }, centre, edits, zone }: { channel: Channels['rows'][number]; centre: Props['centre']; edits: boolean; zone: string }) {
  const ask = useTryChannel(centre.id);
  return (
    <div className="adding trial">
      <ErrorBar error={ask.error} />
      <p role="status" className={trial?.answer && trial.answer !== 'reached' ? 'err' : undefined}>
        {trial && (trial.answer ? <>{lineWords({ ...trial, answer: trial.answer }, address!, kind)} <span className="small quiet">{t('Tried by {name}, {at}.', { name: trial.byName, at: momentAt(trial.at, zone) })}</span></> : t('The line is being tried.'))}
      </p>
      {edits && <Button aria-label={t('Try the connection to {centre}', { centre: centre.name })} onPress={() => ask.mutate()}>{t('Try the connection')}</Button>}
    </div>
  );
}
