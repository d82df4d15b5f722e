import { paragraph, type LetterBlock, type ResultSnapshot } from './letter-blocks.js';
import type { JointOnPaper, JointValue, StudyOnPaper } from './snapshots.js';
import { LETTER_TEXTS as T, type DogWords } from './texts/en.js';
import { capital, dayWords, listWords } from './words.js';

export const jointName = ({ side, joint }: JointOnPaper) => `${side} ${joint}`;

/** The value as printed, held to its unit. */
export const valueWords = ({ value, unit }: JointValue) => `${value}${unit}`.replaceAll(' ', '\u00a0');

export function foundBlocks(studies: StudyOnPaper[], dog: DogWords): LetterBlock[] {
  return [
    paragraph(T.sides(dog)),
    ...studies.flatMap((study): LetterBlock[] => [
      { kind: 'subheading', text: study.title },
      paragraph(study.meaning),
      { kind: 'joints', rows: study.joints.map(jointRow) },
      paragraph(`**For the dog:** ${study.dogResult}.`),
      ...flags(study).map(paragraph),
      ...(study.comment ? [paragraph(`The reader adds: ${study.comment}`)] : []),
    ]),
  ];
}

function jointRow(joint: JointOnPaper) {
  const name = capital(jointName(joint));
  if (joint.finding.kind === 'none') return { name, value: joint.finding.reason, words: '' };
  const { words, also } = joint.finding;
  return { name, value: valueWords(joint.finding), words: [words, ...also].filter(Boolean).join('; ') };
}

function flags(study: StudyOnPaper): string[] {
  return study.joints.flatMap((joint) =>
    joint.finding.kind === 'value' ? joint.finding.flags.map((flag) => `**${capital(jointName(joint))}:** ${flag}`) : [],
  );
}

export function notReadBlocks({ studies, stillOut }: ResultSnapshot): LetterBlock[] {
  const unread = studies.flatMap((study) =>
    study.joints.flatMap((joint) =>
      joint.finding.kind === 'none' ? [`**${study.title}, ${jointName(joint)}:** ${joint.finding.reason}. ${T.noBlame}`] : [],
    ),
  );
  const missing = studies.flatMap((study) =>
    study.viewsMissing.map(({ view, reason }) => `**${study.title}:** the picture “${view}” was not taken. ${reason}`),
  );
  const out = stillOut.map(({ title, words }) => `**${title}:** ${words}`);
  return [...(unread.length === 0 ? [T.allRead] : unread), ...missing, ...out].map(paragraph);
}

export function howSureBlocks(studies: StudyOnPaper[], dog: DogWords): LetterBlock[] {
  return studies.flatMap((study): LetterBlock[] => {
    const lead = studies.length > 1 ? `**${study.title}:** ` : '';
    const ranges = study.joints.flatMap((joint) =>
      joint.finding.kind === 'value' && joint.finding.secondLook ? [{ joint, look: joint.finding.secondLook }] : [],
    );
    const repeat = study.earlier ? [paragraph(`${lead}${dog.name} was examined like this before, read on ${dayWords(study.earlier.readOn)}.`), ...study.earlier.changes.map(paragraph)] : [];
    if (ranges.length === 0) return [paragraph(lead + T.noFigure), ...repeat];
    const words = ranges.map(({ joint, look }) => `from **${look.lower} to ${look.upper}** for the ${jointName(joint)}`);
    const sources = [...new Set(ranges.map(({ look }) => look.source))];
    return [
      paragraph(`${lead}A second look at ${dog.name} might give ${listWords(words)}. Where this comes from: ${sources.join('; ')}.`),
      ...repeat,
    ];
  });
}
