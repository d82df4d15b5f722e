import path from 'node:path/posix';
import { readXml } from './read-xml.js';
import type { Parts } from './unpack.js';

export interface Relation { id: string; type: string; target: string }

/** What a part of a workbook leans on, by the last word of the kind; the whole file is the part without a name. */
export async function relationsOf(part: Parts, of: string): Promise<Relation[]> {
  const folder = path.dirname(of);
  const xml = await part(path.join(folder, '_rels', `${path.basename(of)}.rels`));
  const relations: Relation[] = [];
  if (xml !== undefined) readXml(xml, {
    open: (name, attributes) => {
      if (name !== 'Relationship') return;
      const target = attributes.get('Target') ?? '';
      relations.push({ id: attributes.get('Id') ?? '', type: (attributes.get('Type') ?? '').split('/').at(-1)!, target: target.startsWith('/') ? target.slice(1) : path.join(folder, target) });
    },
  });
  return relations;
}
