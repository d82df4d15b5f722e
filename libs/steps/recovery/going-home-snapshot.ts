import { inAList } from '#libs/contracts/in-a-list';
import { asLanguage } from '#libs/words/languages';
import { wordsOnPaper, type Words } from '#libs/words/words';
import { GOING_HOME_TEMPLATE_VERSION, type GoingHomeSnapshot } from '#libs/documents/snapshots';
import { StepError } from '../record/step-error.js';
import type { Work } from '../record/work.js';
import { missingViews } from './missing-views.js';
import { ownersLanguage } from '../record/owners-language.js';
import { viewName } from '../record/view-name.js';
import { dogOnPaper, moment, practiceOnPaper, today } from '../report/on-paper.js';

/** The practice's own approved words, in the three parts that its text has; never a dose. */
export async function goingHomeSnapshot(work: Work, visit: string, explainedTo: string): Promise<GoingHomeSnapshot> {
  const { tx, order, actor } = work;
  const t = wordsOnPaper(await ownersLanguage(work));
  const texts = await tx.approvedText.findMany({ where: { practiceId: actor.practice, kind: 'goingHome' }, orderBy: { approvedAt: 'desc' } });
  // The owner's own language before any other; what is written in another is said to be so.
  const text = texts.find((each) => each.language === t.language) ?? texts[0];
  if (!text) throw new StepError('HELD', 'Your practice has no approved going-home text yet. A vet adds it under Practice, Texts.');
  const vet = await tx.staff.findUnique({ where: { id: text.approvedBy }, select: { name: true } });
  const from = work.facts('sedationStarted').find((f) => f.visit === visit);
  const recovered = work.facts('recoverySigned').find((f) => f.visit === visit);
  const ended = work.facts('imagingEnded').find((f) => f.visit === visit);
  const parts = splitText(text.body);
  const { phone } = practiceOnPaper(work);
  return {
    templateVersion: GOING_HOME_TEMPLATE_VERSION,
    paper: 'A4',
    lang: t.language,
    issuedAt: moment(work),
    practice: practiceOnPaper({ ...work, order: { ...order, practice: actor.practice } }),
    dog: await dogOnPaper(work),
    date: today(work),
    sleep: {
      rest: 'sedation',
      from: moment(work, from?.at ?? work.now),
      until: moment(work, recovered?.at ?? work.now),
      reversed: work.facts('drugRecorded').some((f) => f.visit === visit && f.event === 'reversal'),
      recoveredAt: moment(work, recovered?.at ?? work.now),
    },
    pictures: pictureWords(t, missingViews(work, visit), ended?.how),
    text: { ...parts, version: text.version, approvedBy: { name: vet?.name ?? t('a vet of the practice'), role: t('vet') }, approvedOn: text.approvedAt.toISOString().slice(0, 10), ...(asLanguage(text.language) === t.language ? {} : { lang: asLanguage(text.language) }) },
    call: { phone, when: t('now and all night') },
    resultWhen: t('What the pictures show comes by letter. It mostly takes a few weeks.'),
    explainedBy: { name: actor.name, role: actor.roles.includes('vet') ? t('vet') : t('nurse') },
    explainedTo: { name: explainedTo, role: t('collects the dog') },
    explainedAt: moment(work),
  };
}

/** The same views that the owner's mail names, so that paper and mail say one thing. */
export function pictureWords(t: Words, missing: string[], how?: string): string {
  if (missing.length === 0) return t('The pictures are done.');
  const views = { missing: inAList(missing.map((view) => viewName(view, t))) };
  return how && how !== 'done'
    ? t('Not all pictures were taken. We stopped, because that was better for the dog. Missing: {missing}. We will call you.', views)
    : t('Not all pictures were taken. Missing: {missing}. We will call you.', views);
}

const HEADINGS = [['normal', /^#+\s*(normal|heute nacht normal)/im], ['whatToDo', /^#+\s*(what to do|was (zu tun|sie tun))/im], ['callAtOnce', /^#+\s*(call|(sofort an)?rufen|sofort anrufen)/im]] as const;

/** The text is written as one, with a heading for each part; what stands before the first heading is what is normal. */
export function splitText(body: string): { normal: string; whatToDo: string; callAtOnce: string } {
  const starts = HEADINGS.map(([name, heading]) => ({ name, at: body.search(heading) })).filter((h) => h.at >= 0).sort((a, b) => a.at - b.at);
  const parts: Record<string, string> = { normal: starts.length === 0 ? body.trim() : body.slice(0, starts[0]!.at).trim(), whatToDo: '', callAtOnce: '' };
  starts.forEach((h, i) => {
    const text = body.slice(h.at, starts[i + 1]?.at).replace(/^[^\n]*\n?/, '').trim();
    parts[h.name] = [parts[h.name], text].filter(Boolean).join('\n\n');
  });
  return { normal: parts.normal!, whatToDo: parts.whatToDo!, callAtOnce: parts.callAtOnce! };
}
