import { newText, textKinds, type PracticeScreen, type PracticeText } from '#libs/contracts/register';
import { Empty } from '../../design/Empty.js';
import { Select } from '../../design/Select.js';
import { Sheet } from '../../design/Sheet.js';
import { TextField } from '../../design/TextField.js';
import { dayAt, fullDay } from '../../design/format.js';
import { t } from '../../words/t.js';
import { AddForm } from './AddForm.js';
import { textKindNames, textLines } from './text-versions.js';
import { useAdd } from './queries.js';
import { named } from '../../words/named.js';

export function TextsSheet({ screen, edits }: { screen: PracticeScreen; edits: boolean }) {
  const { zone } = screen.practice;
  const lines = textLines(screen.texts);
  return (
    <Sheet title={t('Texts')}>
      <p className="small quiet">{t('A vet of the practice stands for each. A new version never changes a paper that was signed or printed before.')}</p>
      {lines.length === 0 && <Empty title={t('No text yet')}>{t('Owners sign these words and take them home, so a vet of the practice writes and approves them.')}</Empty>}
      {lines.map(({ inForce, before }) => (
        <details key={inForce.id} className="text-line">
          <summary>
            <b>{inForce.title}</b>
            <span className="label">
              {t('{kind}, for {dogs}, version {version}', { kind: t(textKindNames[inForce.kind]), dogs: t.known(inForce.forDogs), version: inForce.version })}
            </span>
          </summary>
          <OneText text={inForce} zone={zone} />
          {edits && <TextForm opens={t('Write a new version')} start={inForce} />}
          {before.map((old) => (
            <details key={old.id}>
              <summary className="small">{t('Version {version}, no longer in force', { version: old.version })}</summary>
              <OneText text={old} zone={zone} />
            </details>
          ))}
        </details>
      ))}
      {edits ? <TextForm opens={t('Add a text')} /> : <p className="small">{t('A vet adds texts and new versions, signed in under their own name.')}</p>}
    </Sheet>
  );
}

function OneText({ text, zone }: { text: PracticeText; zone: string }) {
  return (
    <>
      <p className="small quiet">
        {t('Approved by {vet}, {day}', { vet: text.approvedBy, day: fullDay(dayAt(text.approvedAt, zone)) })}
      </p>
      <p className="as-written" lang={text.language}>{text.body}</p>
    </>
  );
}

const kinds = textKinds.map((id) => ({ id, name: textKindNames[id] }));

function TextForm({ opens, start }: { opens: string; start?: PracticeText }) {
  const add = useAdd('/texts');
  const from = start && { kind: start.kind, title: start.title, forDogs: start.forDogs, body: start.body, language: start.language };
  return (
    <AddForm opens={opens} saves={t('I approve this text')} schema={newText} add={add} start={from ?? { forDogs: t('every dog'), language: t.language }}>
      {(entry) => (
        <>
          <Select label={t('Kind')} options={named(kinds)} {...entry.field('kind')} />
          <TextField label={t('Title')} {...entry.field('title')} autoComplete="off" />
          <TextField label={t('For which dogs')} {...entry.field('forDogs')} autoComplete="off" />
          <TextField label={t('Text')} lines={10} {...entry.field('body')} help={t('Short sentences. No dose of any drug. An empty line begins a new paragraph.')} />
          <TextField label={t('Language, two letters')} {...entry.field('language')} autoComplete="off" />
        </>
      )}
    </AddForm>
  );
}
