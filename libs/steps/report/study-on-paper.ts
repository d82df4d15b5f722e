import { wordsOnPaper, type Sentence, type Words } from '#libs/words/words';
import type { JointOnPaper, StudyOnPaper } from '#libs/documents/snapshots';
import { dogsResult } from '#libs/science/protocols/dogs-result';
import { saidFinding } from '#libs/science/protocols/finding-words';
import { secondLook } from '#libs/science/protocols/second-look';
import type { JointReading, Protocol } from '#libs/science/protocols/types';
import { saidValue } from '#libs/science/protocols/value';
import { shortCitation } from '#libs/science/short-citation';
import { filmsOf } from '../dispatch/films-of.js';
import { viewName } from '../record/view-name.js';
import type { Work } from '../record/work.js';
import { protocolOf } from '../result/check-joints.js';
import { jointsOf } from '../result/joints-of.js';

const MEANING: Record<string, Sentence> = {
  'distraction index': 'The number says how far the ball of the thigh bone can be moved out of its socket. 0 means not at all. A higher number means a looser hip.',
  grade: 'The grade says how the joint looks in the picture.',
};

/** One study as letter and certificate show it: each joint's value or reason, and how sure that is. */
export function studyOnPaper(work: Work, study: string, result: string, t: Words = wordsOnPaper('en')): StudyOnPaper {
  const protocol = protocolOf(work, study);
  const arrived = work.facts('resultArrived').find((f) => f.study === study && f.result === result)!;
  const joints = jointsOf(work.facts, arrived) as JointReading[];
  const films = filmsOf(work, study);
  const settled = work.facts('viewsSettled').filter((f) => f.study === study).at(-1)?.why ?? t('It could not be taken.');
  const missing = protocol.views.filter((v) => v.required && !films.some((f) => f.view === v.code && f.accepted));
  const detail = arrived.detail ?? {};
  return {
    title: t.known(protocol.deskName),
    protocol: t.known(protocol.name),
    protocolVersion: protocol.version,
    criteria: criteriaOf(joints, t),
    centre: work.order.centres[work.evaluation.studies[study]!.centre]?.name ?? t('the reading centre'),
    reader: text(detail.reader) ?? t('a reader of the centre'),
    readOn: text(detail.readOn) ?? arrived.at.slice(0, 10),
    imagedOn: films.map((f) => f.imageDay).sort().at(-1) ?? arrived.at.slice(0, 10),
    meaning: t(MEANING[protocol.value.name] ?? MEANING.grade!),
    joints: protocol.joints.flatMap((side) => joints.filter((j) => j.joint === side).map((j) => jointOnPaper(protocol, j, t))),
    dogResult: t.said(dogsResult(protocol, joints).said),
    // What a reader remarks is for the vet, who decides what of it to tell.
    comment: null,
    viewsMissing: missing.map((v) => ({ view: viewName(v.label, t), reason: settled })),
  };
}

const text = (value: unknown): string | null => (typeof value === 'string' && value ? value : null);

function criteriaOf(joints: JointReading[], t: Words): string | null {
  const version = joints.map((j) => j.findings?.criteria).find((c) => typeof c === 'string');
  return version ? t('criteria of {year}', { year: version }) : null;
}

function jointOnPaper(protocol: Protocol, reading: JointReading, t: Words): JointOnPaper {
  const where = { joint: protocol.region, side: reading.joint };
  if (reading.value === undefined) {
    const reason = protocol.noValue.find((r) => r.code === reading.reason);
    return { ...where, finding: { kind: 'none', code: reading.reason ?? '', reason: t('not readable: {reason}', { reason: reason ? t.known(reason.words) : t('no reason was given') }) } };
  }
  const look = secondLook(protocol, reading.value);
  const written = (n: number) => (protocol.value.kind === 'number' ? t.said({ number: n, decimals: protocol.value.decimals, unit: '' }) : String(n));
  return {
    ...where,
    finding: {
      kind: 'value',
      value: protocol.value.kind === 'grade' ? t.said(saidValue(protocol.value, reading.value)) : written(Number(reading.value)),
      unit: protocol.value.kind === 'number' ? protocol.value.unit : '',
      words: ownerWords(protocol, reading.value, t),
      also: foundBeside(protocol, reading, t, (f) => f.kind !== 'yesNo' && f.code !== 'criteria'),
      flags: foundBeside(protocol, reading, t, (f) => f.kind === 'yesNo'),
      secondLook: 'none' in look ? null : { lower: written(look.from), upper: written(look.to), source: shortCitation(look.source) },
    },
  };
}

function ownerWords(protocol: Protocol, value: number | string, t: Words): string {
  if (protocol.value.kind === 'grade') return t.known(protocol.value.grades.find((g) => g.code === value)?.words ?? '');
  return t('the ball moves out by {value} of its own half width', { value: t.said({ number: Number(value), decimals: protocol.value.decimals, unit: '' }) });
}

function foundBeside(protocol: Protocol, reading: JointReading, t: Words, which: (f: Protocol['findings'][number]) => boolean): string[] {
  return protocol.findings.filter(which).flatMap((f) => {
    const found = reading.findings?.[f.code];
    if (found === undefined || found === false) return [];
    return [f.kind === 'yesNo' ? t.known(f.words) : t.said(saidFinding(f, found))];
  });
}
