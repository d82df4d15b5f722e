import { IntlMessageFormat } from 'intl-messageformat';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { roleNames } from '#libs/contracts/common';
import { errorCodes } from '#libs/contracts/errors';
import { allProtocols } from '#libs/science/protocols/catalogue';
import { certificate } from './de/certificate.js';
import { german } from './de/german.js';
import { mails } from './de/mails.js';
import { ownerPage } from './de/owner-page.js';
import { papers } from './de/papers.js';
import { referral } from './de/referral.js';
import { screen } from './de/screen.js';
import { shared } from './de/shared.js';
import { studies } from './de/studies.js';
import { answers } from './de/staff/answers.js';
import { pageWords } from './de/staff/page-words.js';
import { languages } from './languages.js';

type Part = ReturnType<IntlMessageFormat['getAst']>[number];
// As the parser numbers what it finds.
const [SELECT, PLURAL] = [5, 6];

const parts = (text: string): Part[] => {
  const inside = (list: Part[]): Part[] => list.flatMap((part) => [part, ...('options' in part ? Object.values(part.options).flatMap((option) => inside(option.value as Part[])) : [])]);
  return inside(new IntlMessageFormat(text, 'en', undefined, { ignoreTag: true }).getAst());
};
const places = (text: string): Set<string> => new Set(parts(text).flatMap((part) => ([1, 2, 3, 4, SELECT, PLURAL].includes(part.type) && 'value' in part ? [String(part.value)] : [])));

/** English bends a word to the dog; other languages call it by its name, or leave it out. */
const BENT = new Set(['he', 'him', 'his', 'His', 'names', 'name']);
/** Places that only one of the two languages has. */
function lostOrNew(english: string, text: string): string[] {
  const [asked, given] = [places(english), places(text)];
  const bent = [...asked].some((place) => BENT.has(place));
  return [...[...given].filter((place) => !asked.has(place) && !(place === 'name' && bent)), ...[...asked].filter((place) => !BENT.has(place) && !given.has(place))];
}
const entries = Object.entries(german);

const root = new URL('../../', import.meta.url).pathname;
const sources = ['libs', 'apps'].flatMap((part) =>
  readdirSync(join(root, part), { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file) && !/\.test\.|generated|words\/de\//.test(file))
    .map((file) => join(root, part, file)),
);

/** Every text of the program's source, and as patterns what the studies put together for a side. */
function written(): { texts: Set<string>; patterns: RegExp[] } {
  const texts = new Set<string>();
  const patterns: RegExp[] = [];
  let studies = false;
  const look = (node: ts.Node): void => {
    if (ts.isStringLiteralLike(node)) texts.add(node.text);
    if (ts.isTemplateExpression(node) && studies) {
      const fixed = [node.head.text, ...node.templateSpans.map((span) => span.literal.text)];
      if (fixed.some((text) => /\p{L}{2}/u.test(text))) patterns.push(new RegExp(`^${fixed.map((text) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')).join('.+')}$`, 'u'));
    }
    ts.forEachChild(node, look);
  };
  for (const file of sources) {
    studies = file.includes('/science/protocols/');
    const kind = file.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
    look(ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.ES2023, false, kind));
  }
  return { texts, patterns };
}

describe('the German catalogue', () => {
  it('says each sentence in one way', () => {
    expect(entries).toHaveLength([certificate, mails, ownerPage, papers, referral, screen, shared, studies].reduce((sum, part) => sum + Object.keys(part).length, 0));
  });

  it.each(entries)('says in German what stands for “%s”', (english, text) => expect(lostOrNew(english, text)).toEqual([]));

  it('chooses by number only among the forms that the language has', () => {
    for (const [english, text] of entries) {
      for (const [language, message] of [['en', english], ['de', text]] as const) {
        const forms = new Intl.PluralRules(languages[language].dates).resolvedOptions().pluralCategories as string[];
        for (const part of parts(message)) {
          if (part.type !== PLURAL || !('options' in part)) continue;
          expect([message, Object.keys(part.options).filter((form) => !form.startsWith('=')).sort()]).toEqual([message, [...forms].sort()]);
        }
      }
    }
  });

  it('has nothing that nobody says any more', () => {
    const { texts, patterns } = written();
    // Put together from two words: which side, which joint; and what is made of "tightest" and "lowest".
    const composed = /^(left|right) (hip|elbow)$|^(Left|Right) (hip|elbow)$|^(hips|elbows)$|^(tighter|looser|lower|higher)$/;
    const left = entries.map(([english]) => english).filter((english) => !texts.has(english) && !composed.test(english) && !patterns.some((pattern) => pattern.test(english)));
    expect(left).toEqual([]);
  });

  it('has a word for all that the studies of the program tell an owner', () => {
    const told = allProtocols().flatMap((p) => [
      p.name, p.deskName, p.dog.worseWords, ...p.views.map((v) => v.label), ...p.noValue.map((r) => r.words),
      ...(p.value.kind === 'grade' ? [p.value.name, ...p.value.grades.map((g) => g.words)] : []),
      ...p.findings.filter((f) => f.code !== 'criteria').flatMap((f) => [f.label, ...(f.kind === 'yesNo' ? [f.words] : []), ...(f.kind === 'choice' ? f.choices.map((c) => c.words) : [])]),
    ]);
    expect([...new Set(told)].filter((text) => !Object.hasOwn(german, text))).toEqual([]);
  });
});

describe('the contracts, in German', () => {
  /** Words of a contract begin with a capital letter or hold a space; codes, names of fields and paths do neither. */
  const words = (file: string): string[] => {
    const found: string[] = [];
    const look = (node: ts.Node): void => {
      if (ts.isImportDeclaration(node) || ts.isLiteralTypeNode(node)) return;
      if (ts.isStringLiteralLike(node) && /\p{L}{2}/u.test(node.text) && /^\p{Lu}\p{Ll}|\p{L} \p{L}/u.test(node.text)) found.push(node.text);
      ts.forEachChild(node, look);
    };
    look(ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.ES2023, true, ts.ScriptKind.TS));
    return found;
  };
  // What nobody reads on a page: an error of our own code.
  const unseen = new Set(['the pixels were cut short']);

  it('have a word for each title, help, choice and message', () => {
    const files = sources.filter((file) => file.includes('/libs/contracts/') && !file.endsWith('/errors.ts'));
    const left = files.flatMap(words).filter((text) => !Object.hasOwn(pageWords, text) && !unseen.has(text));
    expect(files.length).toBeGreaterThan(20);
    expect([...new Set(left)]).toEqual([]);
  });

  it('have a word for each role', () => {
    expect(Object.values(roleNames).filter((name) => !Object.hasOwn(pageWords, name))).toEqual([]);
  });

  it('have an answer for each error code', () => {
    expect(Object.values(errorCodes).map(({ says }) => says).filter((says) => !Object.hasOwn(answers, says))).toEqual([]);
  });
});

describe('the pages of those who sign in', () => {
  it.each(Object.entries(pageWords))('say in German what stands for “%s”', (english, text) => expect(lostOrNew(english, text)).toEqual([]));
});

describe('what the server answers those who sign in', () => {
  // Who does something may begin the sentence in one language and not in the other.
  const anyCase = (text: string) => text.replace(/\{(Owner|Desk|Vet|Nurse|Radiographer|Manager|Lead)\}/g, (place) => place.toLowerCase());

  it.each(Object.entries(answers))('says in German what stands for “%s”', (english, text) => expect(lostOrNew(...([english, text].map(anyCase) as [string, string]))).toEqual([]));

  it('has nothing that nobody says any more', () => {
    const { texts, patterns } = written();
    const composed = /^(left|right) \{region\}$/;
    expect(Object.keys(answers).filter((english) => !texts.has(english) && !composed.test(english) && !patterns.some((pattern) => pattern.test(english)))).toEqual([]);
  });
});

describe('the pages of owners', () => {
  const folder = join(root, 'apps/web/screens/owner');
  const files = readdirSync(folder).filter((file) => file.endsWith('.tsx'));

  it.each(files)('%s shows no words but those of the catalogue', (file) => {
    const bare: string[] = [];
    const look = (node: ts.Node): void => {
      if (ts.isJsxText(node) && /\p{L}{2}/u.test(node.text.replace('PDF', ''))) bare.push(node.text.trim());
      if (ts.isJsxAttribute(node) && /^(label|title|help|alt|aria-label|what)$/.test(node.name.getText()) && node.initializer && !ts.isJsxExpression(node.initializer)) bare.push(node.getText());
      if (ts.isTemplateExpression(node) && / /.test(node.head.text + node.templateSpans.map((span) => span.literal.text).join('')) && /\p{L}{3}/u.test(node.getText().replace(/\$\{[^}]*\}/g, ''))) bare.push(node.getText());
      ts.forEachChild(node, look);
    };
    look(ts.createSourceFile(file, readFileSync(join(folder, file), 'utf8'), ts.ScriptTarget.ES2023, true, ts.ScriptKind.TSX));
    expect(bare).toEqual([]);
  });
});
