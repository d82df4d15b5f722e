import { useNavigate, useParams } from '@tanstack/react-router';
import type { PackageScreen as Screen } from '#libs/contracts/screens/reader';
import { Button } from '../../design/Button.js';
import { Loading } from '../../design/Empty.js';
import { Download } from '../../design/Download.js';
import { ErrorBar, Notice } from '../../design/Notice.js';
import { capital, fullDay, transponder } from '../../design/format.js';
import { useMe } from '../../shell/me.js';
import { t } from '../../words/t.js';
import { Bench } from './Bench.js';
import { PackageLinks } from './PackageLinks.js';
import { ReadingForm } from './ReadingForm.js';
import { SignedReading } from './SignedReading.js';
import { dueWords, isOpen } from './due.js';
import { useAcknowledge, usePackage, usePackages } from './queries.js';
import './reader.css';
import { HERE, Told } from '../../words/Told.js';

export function PackageScreen() {
  const { package: id } = useParams({ from: '/inside/reader/$package' });
  const { data: screen, error } = usePackage(id);
  const others = usePackages(1).data?.rows.filter(isOpen) ?? [];
  const { zone, kind } = useMe();
  const navigate = useNavigate();
  if (!screen) return error ? <ErrorBar error={error} /> : <Loading what={t('the package')} />;

  const next = others.find((row) => row.package !== id);
  // A link opens one package: there is nowhere to go on to.
  const goOn = () => kind === 'reader' && void (next ? navigate({ to: '/reader/$package', params: { package: next.package } }) : navigate({ to: '/reader', search: {} }));
  return (
    <div className="package" key={id}>
      <nav className="beside-list" aria-label={t('Packages to read')}>
        <h2>
          {t('To read')} <span className="quiet">{others.length}</span>
        </h2>
        <PackageLinks rows={others} slim />
      </nav>
      <Bench screen={screen} />
      <section className="desk" aria-labelledby="package-title">
        <Head screen={screen} />
        {screen.state === 'new' && <Acknowledge id={id} />}
        <h2 className="rule-h">{screen.study}</h2>
        {screen.reading ? <SignedReading reading={screen.reading} zone={zone} /> : screen.state === 'rejected' ? <Notice>{t('You sent this package back. When new films come, they come as a package of their own.')}</Notice> : <ReadingForm screen={screen} onSigned={goOn} />}
      </section>
    </div>
  );
}

function Head({ screen }: { screen: Screen }) {
  return (
    <>
      <h1 id="package-title" className="num">
        {screen.number}
      </h1>
      <p className="blind small">
        <Told
          text={t('{dog}, {age} on the day. Pictures of {day}. Dog’s number {number}. **{due}.**', { dog: [screen.breed, t.known(screen.sex), screen.neutered && t('neutered')].filter(Boolean).join(', '), age: screen.ageAtImaging, day: fullDay(screen.imagedOn), number: HERE, due: capital(dueWords(screen, 'long')) })}
          here={<span className="val">{transponder(screen.dogNumber)}</span>}
        />
        <br />
        <span className="quiet">{t('You read blind: no owner, no practice, no estimate from the room, no earlier reading.')}</span>
      </p>
      {screen.remarks.map((remark) => (
        <p key={remark} className="why small">
          {remark}
        </p>
      ))}
      <div className="small after">
        <Download path={`/reader/packages/${screen.package}/zip`} name={screen.zipName}>
          {t('Fetch all films, {file}', { file: screen.zipName })}
        </Download>
        . {t('The page shows copies to look at; measure on the films themselves.')}
      </div>
      <details className="small">
        <summary>{t('How to check that the package is whole')}</summary>
        <p className="hash">{t('The list of films in it has the SHA-256 sum {sum}', { sum: screen.manifest })}</p>
      </details>
    </>
  );
}

function Acknowledge({ id }: { id: string }) {
  const acknowledge = useAcknowledge(id);
  return (
    <div className="form acknowledge">
      <p>
        <Told strong="asked" text={t('**Say that it has come.** The days you have for reading count from then.')} />
      </p>
      <ErrorBar error={acknowledge.error} />
      <Button kind="elder" onPress={() => acknowledge.mutate({})}>
        {t('The package has come')}
      </Button>
    </div>
  );
}
