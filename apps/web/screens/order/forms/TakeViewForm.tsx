import { useState } from 'react';
import { studyActions } from '#libs/contracts/actions/study';
import type { OrderScreen, StudyView } from '#libs/contracts/screens/order';
import type { Uploaded } from '../../../api/upload.js';
import { CheckboxGroup } from '../../../design/Checkboxes.js';
import { RadioChoice } from '../../../design/RadioChoice.js';
import { Select } from '../../../design/Select.js';
import { timeAt } from '../../../design/format.js';
import { useEntry } from '../../../entry/use-entry.js';
import { t } from '../../../words/t.js';
import { ActionEntryForm } from './ActionEntryForm.js';
import { ArrivedPicture } from '../record/Arrived.js';
import { choicesFor, studyOf, type FormProps } from './form-props.js';
import { PixelSizeFields } from './PixelSizeFields.js';
import { TechniqueFields } from './TechniqueFields.js';
import { UploadField } from './UploadField.js';
import { optionWords } from './option-words.js';

const FILE = 'file';
const markers = () => (['L', 'R', 'both', 'none'] as const).map((id) => ({ id, byLetter: true, name: optionWords(id) }));

/** One film: the picture, which view it is, whom it serves, who was in the room. */
export function TakeViewForm(props: FormProps) {
  const { screen } = props;
  const study = studyOf(props);
  const next = (props.start?.view as string | undefined) ?? nextView(screen, study);
  const entry = useEntry(studyActions.takeView, { ...(next && { view: next, serves: serving(screen.studies, next) }), technique: {}, ...(screen.arrived[0] && { image: screen.arrived[0].image }), ...props.start });
  const [uploaded, setUploaded] = useState<Uploaded>();
  const [from, setFrom] = useState<string | undefined>(screen.arrived[0]?.image ?? FILE);
  const arrived = screen.arrived.find((a) => a.image === from);
  const view = entry.field('view');
  const views = choicesFor(screen, 'views').length > 0 ? choicesFor(screen, 'views') : viewsOf(screen.studies);
  return (
    <ActionEntryForm entry={entry} props={props} size="tablet">
      <Select
        label={t('View')}
        options={views}
        {...view}
        onChange={(v) => {
          view.onChange(v);
          if (v) entry.set('serves', serving(screen.studies, v));
          entry.set('size', undefined);
        }}
      />
      <CheckboxGroup label={t('For which studies')} options={choicesFor(screen, 'studies')} {...entry.field('serves')} />
      {screen.arrived.length > 0 && (
        <RadioChoice
          label={t('Picture')}
          size="tablet"
          options={[...screen.arrived.map((a) => ({ id: a.image, name: t('From {machine}, {time}', { machine: a.from, time: timeAt(a.at, screen.practice.zone) }) })), { id: FILE, name: t('A file of mine') }]}
          value={from}
          onChange={(image) => {
            setFrom(image);
            entry.set('image', image === FILE ? uploaded?.image : image);
            entry.set('size', undefined);
          }}
          error={undefined}
        />
      )}
      {arrived ? (
        <ArrivedPicture order={screen.id} image={arrived} zone={screen.practice.zone} />
      ) : (
        <UploadField
          order={screen.id}
          label={t('Picture from the console: DICOM, PNG or JPEG.')}
          uploaded={uploaded}
          error={entry.error('image')}
          onUploaded={(u) => {
            setUploaded(u);
            entry.set('image', u?.image);
            entry.set('size', undefined);
          }}
        />
      )}
      {!arrived && uploaded && uploaded.kind !== 'dicom' && <PixelSizeFields screen={screen} view={view.value} value={entry.values.size} onChange={(size) => entry.set('size', size)} error={entry.error} />}
      <RadioChoice label={t('Side marker seen in the image')} size="tablet" options={markers()} {...entry.field('marker')} />
      <CheckboxGroup label={t('Who was in the room')} size="tablet" options={choicesFor(screen, 'staff')} {...entry.field('people')} />
      <TechniqueFields value={entry.values.technique ?? {}} onChange={(written) => entry.set('technique', written)} error={(name) => entry.error(`technique.${name}`)} />
    </ActionEntryForm>
  );
}

const viewsOf = (studies: readonly StudyView[]) => {
  const all = studies.flatMap((s) => s.views);
  return all.filter((v, i) => all.findIndex((w) => w.view === v.view) === i).map((v) => ({ id: v.view, name: v.name }));
};

/** The first required view that is neither accepted nor waiting to be judged. */
function nextView({ studies, exposures }: OrderScreen, own: StudyView | undefined): string | undefined {
  const wanted = [own, ...studies].flatMap((s) => s?.views ?? []).filter((v) => v.required && !v.accepted);
  const waits = (view: string) => exposures.some((e) => e.view === view && !e.disowned && e.verdicts.length === 0);
  return (wanted.find((v) => !waits(v.view)) ?? wanted[0])?.view;
}

/** One exposure may serve two studies, and is never taken twice for that reason alone. */
const serving = (studies: readonly StudyView[], view: string) => studies.filter((s) => s.views.some((v) => v.view === view && !v.accepted)).map((s) => s.id);
