import fs from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { root } from './root.mjs';

const DOCUMENT = 'DEVELOPERS.md';

/** A part stands between <!-- made: NAME --> and <!-- end: NAME --> and is made by a built module. */
const parts = [{ name: 'error codes', module: 'libs/contracts/errors.js', make: ({ errorCodes }) => errorTable(errorCodes) }];

function errorTable(codes) {
  const rows = Object.entries(codes).map(([code, { status, says }]) => `| \`${code}\` | ${status} | ${says} |`);
  return ['| Code | Status | What the person reads |', '| --- | --- | --- |', ...rows].join('\n');
}

function replacePart(text, name, content) {
  const [begin, end] = [`<!-- made: ${name} -->`, `<!-- end: ${name} -->`];
  const [from, to] = [text.indexOf(begin), text.indexOf(end)];
  if (from < 0 || to < from) throw new Error(`${DOCUMENT} has no place for "${name}": it needs the lines ${begin} and ${end}.`);
  return `${text.slice(0, from + begin.length)}\n${content}\n${text.slice(to)}`;
}

/** The document as the code would have it, and the names of the parts that differ. */
async function remake() {
  const before = fs.readFileSync(path.join(root, DOCUMENT), 'utf8');
  let after = before;
  const changed = [];
  for (const { name, module, make } of parts) {
    const content = make(await import(pathToFileURL(path.join(root, 'dist', module))));
    const next = replacePart(after, name, content.trim());
    if (next !== after) changed.push(`${name} in ${DOCUMENT}`);
    after = next;
  }
  return { after, changed };
}

export const checkDocuments = async () => (await remake()).changed;

export async function writeDocuments() {
  const { after, changed } = await remake();
  if (changed.length) fs.writeFileSync(path.join(root, DOCUMENT), after);
  return changed;
}
