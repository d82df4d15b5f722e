import type { Table } from '../table.js';
import { formatsIn } from './formats.js';
import { readSheet } from './read-sheet.js';
import { readXml } from './read-xml.js';
import { relationsOf } from './relations.js';
import { sharedTexts } from './shared-texts.js';
import { unpack, type Parts } from './unpack.js';
import { damaged, notXlsx, Unreadable } from './unreadable.js';

/**
 * The first sheet that can be seen, as its values are stored: no formula is worked out and nothing of the file is run.
 * Written for ECMA-376 (Office Open XML), in its older and its strict form.
 */
export async function readWorkbook(bytes: Uint8Array): Promise<Table> {
  try {
    return await firstSheet(await unpack(bytes));
  } catch (error) {
    if (error instanceof Unreadable) return { line: 1, told: error.said };
    throw error;
  }
}

async function firstSheet(part: Parts): Promise<Table> {
  const book = (await relationsOf(part, '')).find((r) => r.type === 'officeDocument')?.target;
  const xml = book?.endsWith('.xml') ? await part(book) : undefined;
  if (!book || xml === undefined) throw notXlsx();
  const { sheets, from1904 } = contents(xml);
  const relations = await relationsOf(part, book);
  const one = async (type: string) => (await part(relations.find((r) => r.type === type)?.target ?? '')) ?? '';
  const first = sheets.find((s) => !s.hidden && relations.some((r) => r.id === s.relation && r.type === 'worksheet'));
  if (!first) throw notXlsx();
  const sheet = await part(relations.find((r) => r.id === first.relation)!.target);
  if (sheet === undefined) throw damaged();
  const lines = readSheet(sheet, { texts: sharedTexts(await one('sharedStrings')), formats: formatsIn(await one('styles')), from1904 });
  return { lines, sheet: { name: first.name, others: sheets.length - 1 } };
}

interface Listed { name: string; relation: string; hidden: boolean }

function contents(xml: string): { sheets: Listed[]; from1904: boolean } {
  const sheets: Listed[] = [];
  let from1904 = false;
  readXml(xml, {
    open: (name, attributes) => {
      if (name === 'workbookPr') from1904 = ['1', 'true'].includes(attributes.get('date1904') ?? '');
      if (name === 'sheet') sheets.push({ name: attributes.get('name') ?? '', relation: attributes.get('id') ?? '', hidden: (attributes.get('state') ?? 'visible') !== 'visible' });
    },
  });
  return { sheets, from1904 };
}
