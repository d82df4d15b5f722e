import { wordsOnPaper, type Words } from '#libs/words/words';
import { paragraph, type LetterBlock, type ResultSnapshot, type Telling } from './letter-blocks.js';
import type { JointOnPaper, JointValue, StudyOnPaper } from './snapshots.js';
import { LETTER_TEXTS as T } from './texts/en.js';
import { standingWords } from './texts/standing.js';
import { capital, listWords } from './words.js';

export const jointName = ({ side, joint }: JointOnPaper, t: Words = wordsOnPaper('en')) => t(`${side} ${joint}`);

/** The value as printed, held to its unit. */
export const valueWords = ({ value, unit }: JointValue) => `${value}${unit}`.replaceAll(' ', '\u00a0');

export function foundBlocks(studies: StudyOnPaper[], { t, dog }: Telling): LetterBlock[] {
  return [
    paragraph(t(T.sides, dog)),
    ...studies.flatMap((study): LetterBlock[] => [
      { kind: 'subheading', text: study.title },
      paragraph(study.meaning),
      { kind: 'joints', rows: study.joints.map((joint) => jointRow(joint, t)) },
      paragraph(t('**For the dog:** {result}.', { result: study.dogResult })),
      ...flags(study, t).map(paragraph),
      ...(study.comment ? [paragraph(t('The reader adds: {comment}', { comment: study.comment }))] : []),
    ]),
  ];
}

function jointRow(joint: JointOnPaper, t: Words) {
  const name = capital(jointName(joint, t));
  if (joint.finding.kind === 'none') return { name, value: joint.finding.reason, words: '' };
  const { words, also } = joint.finding;
  return { name, value: valueWords(joint.finding), words: [words, ...also].filter(Boolean).join('; ') };
}

function flags(study: StudyOnPaper, t: Words): string[] {
  return study.joints.flatMap((joint) =>
    joint.finding.kind === 'value' ? joint.finding.flags.map((flag) => `**${capital(jointName(joint, t))}:** ${flag}`) : [],
  );
}

export function notReadBlocks({ studies, stillOut }: ResultSnapshot, { t }: Telling): LetterBlock[] {
  const unread = studies.flatMap((study) =>
    study.joints.flatMap((joint) =>
      joint.finding.kind === 'none' ? [`**${study.title}, ${jointName(joint, t)}:** ${joint.finding.reason}. ${t(T.noBlame)}`] : [],
    ),
  );
  const missing = studies.flatMap((study) =>
    study.viewsMissing.map(({ view, reason }) => `**${study.title}:** ${t('the picture “{view}” was not taken. {reason}', { view, reason })}`),
  );
  const out = stillOut.map(({ title, words }) => `**${title}:** ${words}`);
  return [...(unread.length === 0 ? [t(T.allRead)] : unread), ...missing, ...out].map(paragraph);
}

export function howSureBlocks(studies: StudyOnPaper[], { t, dog, day }: Telling): LetterBlock[] {
  return studies.flatMap((study): LetterBlock[] => {
    const lead = studies.length > 1 ? `**${study.title}:** ` : '';
    const ranges = study.joints.flatMap((joint) =>
      joint.finding.kind === 'value' && joint.finding.secondLook ? [{ joint, look: joint.finding.secondLook }] : [],
    );
    const repeat = study.earlier ? [paragraph(lead + t('{name} was examined like this before, read on {day}.', { ...dog, day: day(study.earlier.readOn) })), ...study.earlier.changes.map(paragraph)] : [];
    if (ranges.length === 0) return [paragraph(lead + t(T.noFigure)), ...repeat];
    const words = ranges.map(({ joint, look }) => t('from **{lower} to {upper}** for the {joint}', { lower: look.lower, upper: look.upper, joint: jointName(joint, t) }));
    const sources = [...new Set(ranges.map(({ look }) => look.source))];
    return [
      paragraph(`${lead}${t('A second look at {name} might give {ranges}.', { ...dog, ranges: listWords(words, t.language) })} ${t(T.secondLooks, { source: sources.join('; ') })}`),
      ...repeat,
    ];
  });
}

/** Each study's place among the breed, or in words why there is none. */
export function amongBlocks(studies: StudyOnPaper[], { t, dog }: Telling): LetterBlock[] {
  return studies.flatMap((study): LetterBlock[] => {
    if (!study.standing) return [];
    const { line, lead, small } = standingWords(study.standing, dog, t);
    const title: LetterBlock[] = studies.length > 1 ? [{ kind: 'subheading', text: study.title }] : [];
    return [...title, paragraph(lead), ...(line ? [{ kind: 'twenty' as const, line }] : []), ...small.map((text): LetterBlock => ({ kind: 'small', text }))];
  });
}
