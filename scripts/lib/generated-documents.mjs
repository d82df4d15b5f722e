import fs from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { root } from './root.mjs';

/** Made by built modules: a whole file, or the part of a file between <!-- made: PART --> and <!-- end: PART -->. */
const documents = [
  { file: 'docs/roads.svg', module: 'libs/pathway/draw-roads.js', make: ({ drawRoads }) => drawRoads() },
  { file: 'DEVELOPERS.md', part: 'error codes', module: 'libs/contracts/errors.js', make: ({ errorCodes }) => errorTable(errorCodes) },
];

function errorTable(codes) {
  const rows = Object.entries(codes).map(([code, { status, says }]) => `| \`${code}\` | ${status} | ${says} |`);
  return ['| Code | Status | What the person reads |', '| --- | --- | --- |', ...rows].join('\n');
}

function replacePart(text, { file, part }, content) {
  const [begin, end] = [`<!-- made: ${part} -->`, `<!-- end: ${part} -->`];
  const [from, to] = [text.indexOf(begin), text.indexOf(end)];
  if (from < 0 || to < from) throw new Error(`${file} has no place for "${part}": it needs the lines ${begin} and ${end}.`);
  return `${text.slice(0, from + begin.length)}\n${content}\n${text.slice(to)}`;
}

/** What the code would have a file hold, or undefined when it holds that already. */
async function remake(document) {
  const content = document.make(await import(pathToFileURL(path.join(root, 'dist', document.module))));
  const file = path.join(root, document.file);
  const before = fs.existsSync(file) ? fs.readFileSync(file, 'utf8') : '';
  const after = document.part ? replacePart(before, document, content) : content;
  return after === before ? undefined : after;
}

async function eachStale(act) {
  const stale = [];
  for (const document of documents) {
    const content = await remake(document);
    if (content === undefined) continue;
    stale.push(document.part ? `${document.part} in ${document.file}` : document.file);
    act(path.join(root, document.file), content);
  }
  return stale;
}

export const checkDocuments = () => eachStale(() => {});

export function writeDocuments() {
  return eachStale((file, content) => {
    fs.mkdirSync(path.dirname(file), { recursive: true });
    fs.writeFileSync(file, content);
  });
}
