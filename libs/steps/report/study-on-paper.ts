import type { JointOnPaper, StudyOnPaper } from '#libs/documents/snapshots';
import { dogsResult } from '#libs/science/protocols/dogs-result';
import { secondLook } from '#libs/science/protocols/second-look';
import type { JointReading, Protocol } from '#libs/science/protocols/types';
import { formatValue } from '#libs/science/protocols/value';
import { filmsOf } from '../dispatch/films-of.js';
import type { Work } from '../record/work.js';
import { protocolOf } from '../result/check-joints.js';
import { jointsOf } from '../result/joints-of.js';

const MEANING: Record<string, string> = {
  'distraction index': 'The number says how far the ball of the thigh bone can be moved out of its socket. 0 means not at all. A higher number means a looser hip.',
  grade: 'The grade says how the joint looks in the picture.',
};

/** One study as letter and certificate show it: each joint's value or reason, and how sure that is. */
export function studyOnPaper(work: Work, study: string, result: string): StudyOnPaper {
  const protocol = protocolOf(work, study);
  const arrived = work.facts('resultArrived').find((f) => f.study === study && f.result === result)!;
  const joints = jointsOf(work.facts, arrived) as JointReading[];
  const films = filmsOf(work, study);
  const settled = work.facts('viewsSettled').filter((f) => f.study === study).at(-1)?.why ?? 'It could not be taken.';
  const missing = protocol.views.filter((v) => v.required && !films.some((f) => f.view === v.code && f.accepted));
  const detail = arrived.detail ?? {};
  return {
    title: protocol.deskName,
    protocol: protocol.name,
    protocolVersion: protocol.version,
    criteria: criteriaOf(joints),
    centre: work.order.centres[work.evaluation.studies[study]!.centre]?.name ?? 'the reading centre',
    reader: text(detail.reader) ?? 'a reader of the centre',
    readOn: text(detail.readOn) ?? arrived.at.slice(0, 10),
    imagedOn: films.map((f) => f.imageDay).sort().at(-1) ?? arrived.at.slice(0, 10),
    meaning: MEANING[protocol.value.name] ?? MEANING.grade!,
    joints: protocol.joints.flatMap((side) => joints.filter((j) => j.joint === side).map((j) => jointOnPaper(protocol, j))),
    dogResult: dogsResult(protocol, joints).words,
    // What a reader remarks is for the vet, who decides what of it to tell.
    comment: null,
    viewsMissing: missing.map((v) => ({ view: v.label.toLowerCase(), reason: settled })),
  };
}

const text = (value: unknown): string | null => (typeof value === 'string' && value ? value : null);

function criteriaOf(joints: JointReading[]): string | null {
  const version = joints.map((j) => j.findings?.criteria).find((c) => typeof c === 'string');
  return version ? `criteria of ${version}` : null;
}

function jointOnPaper(protocol: Protocol, reading: JointReading): JointOnPaper {
  const where = { joint: protocol.region, side: reading.joint };
  if (reading.value === undefined) {
    const reason = protocol.noValue.find((r) => r.code === reading.reason);
    return { ...where, finding: { kind: 'none', code: reading.reason ?? '', reason: `not readable: ${reason?.words ?? 'no reason was given'}` } };
  }
  const look = secondLook(protocol, reading.value);
  const written = (n: number) => (protocol.value.kind === 'number' ? n.toFixed(protocol.value.decimals) : String(n));
  return {
    ...where,
    finding: {
      kind: 'value',
      value: protocol.value.kind === 'grade' ? formatValue(protocol.value, reading.value) : written(Number(reading.value)),
      unit: protocol.value.kind === 'number' ? protocol.value.unit : '',
      words: ownerWords(protocol, reading.value),
      also: findingWords(protocol, reading, (f) => f.kind !== 'yesNo' && f.code !== 'criteria'),
      flags: findingWords(protocol, reading, (f) => f.kind === 'yesNo'),
      secondLook: 'none' in look ? null : { lower: written(look.from), upper: written(look.to), source: look.source.replace(/\.$/, '') },
    },
  };
}

function ownerWords(protocol: Protocol, value: number | string): string {
  if (protocol.value.kind === 'grade') return protocol.value.grades.find((g) => g.code === value)?.words ?? '';
  return `the ball moves out by ${Number(value).toFixed(protocol.value.decimals)} of its own half width`;
}

function findingWords(protocol: Protocol, reading: JointReading, which: (f: Protocol['findings'][number]) => boolean): string[] {
  return protocol.findings.filter(which).flatMap((f) => {
    const found = reading.findings?.[f.code];
    if (found === undefined || found === false) return [];
    if (f.kind === 'yesNo') return [f.words];
    if (f.kind === 'choice') return [`${f.label}: ${f.choices.find((c) => c.code === found)?.words ?? String(found)}`];
    return [`${f.label} ${Number(found).toFixed(f.decimals)}${f.unit}`];
  });
}
