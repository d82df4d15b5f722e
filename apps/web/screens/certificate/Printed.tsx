import type { ReactNode } from 'react';
import type { CertificateCheck } from '#libs/contracts/screens/owner';
import { Sheet } from '../../design/Sheet.js';
import { fullDay } from '../../design/format.js';

/** All that is printed on the paper, and nobody's name: the owner is not on it. */
export function Printed({ check }: { check: CertificateCheck }) {
  const { dog, study } = check;
  return (
    <Sheet title={check.title} beside={`issued ${fullDay(check.issuedOn)} by ${check.issuer}`} className={check.state === 'valid' ? '' : 'superseded'}>
      <div className="cert-cols">
        <Facts
          rows={[
            ['Dog', <b key="dog">{dog.name}</b>],
            ['Breed, sex', `${dog.breed}, ${dog.sex}`],
            ['Born', dog.born],
            ['Transponder', <span key="chip" className="val">{dog.transponder}</span>],
            ['Read at imaging by', study.identityReadBy],
          ]}
        />
        <Facts
          rows={[
            ['Study', study.protocol],
            ['Protocol version', study.version],
            ['Pictures', fullDay(study.imagedOn)],
            ['Age that day', study.ageAtImaging],
            ['Read by', study.centre],
          ]}
        />
      </div>
      <dl className="cert-joints">
        {check.joints.map((joint) => (
          <div key={joint.name}>
            <dt>{joint.name}</dt>
            <dd>{joint.words}</dd>
          </div>
        ))}
        <div className="of-dog">
          <dt>Result of the dog</dt>
          <dd>{check.dogResult}</dd>
        </div>
      </dl>
      <h3>What it does not tell</h3>
      <ul className="limits">
        {check.limits.map((limit) => (
          <li key={limit}>{limit}</li>
        ))}
      </ul>
    </Sheet>
  );
}

const Facts = ({ rows }: { rows: [string, ReactNode][] }) => (
  <dl className="facts">
    {rows.flatMap(([name, value]) => [<dt key={name}>{name}</dt>, <dd key={`${name}-value`}>{value}</dd>])}
  </dl>
);
