import { besideValue, valueOf } from './certificate-facts.js';
import { dogWords } from './letter-parts.js';
import { jointName } from './letter-findings.js';
import { DOG_LENGTH, JOINT_PLACES, drawDogFromAbove } from './print/dog-from-above.js';
import type { TextStyle } from './print/rich-text.js';
import { INK, MARK, QUIET, mm, type Sheet } from './print/sheet.js';
import type { CertificateSnapshot, JointOnPaper } from './snapshots.js';
import { capital } from './words.js';

interface Plate {
  top: number;
  bottom: number;
  side: number;
}

interface Entry {
  study: string;
  joint: JointOnPaper;
}

const NAME: TextStyle = { size: 10, leading: 1.35, color: QUIET };
const SMALL: TextStyle = { size: 9, leading: 1.35, color: QUIET };

/** Each joint's reading beside its place on the dog; a filled place was read, an open one was not. */
export function drawJoints(sheet: Sheet, snapshot: CertificateSnapshot, plate: Plate): void {
  const several = snapshot.studies.length > 1;
  const entries = snapshot.studies.flatMap(({ title, joints }) => joints.map((joint) => ({ study: title, joint })));
  const length = Math.min(plate.bottom - plate.top, mm(118));
  const dog = { x: sheet.width / 2, y: plate.top + (plate.bottom - plate.top - length) / 2, scale: length / DOG_LENGTH };
  const section = sheet.group(sheet.root, 'Sect');
  const alt = `${snapshot.dog.callName} seen from above, head at the top; the readings stand beside the joints`;
  sheet.tagged(section, 'Figure', () => drawDogFromAbove(sheet.doc, dog), { alt });
  for (const joint of ['elbow', 'hip'] as const) {
    for (const side of ['left', 'right'] as const) {
      const here = entries.filter((entry) => entry.joint.joint === joint && entry.joint.side === side);
      const first = here[0];
      if (!first) continue;
      const outward = side === 'left' ? -1 : 1;
      const place = { x: dog.x + outward * JOINT_PLACES[joint].x * dog.scale, y: dog.y + JOINT_PLACES[joint].y * dog.scale };
      const textEdge = dog.x + outward * mm(27);
      const read = here.some((entry) => entry.joint.finding.kind === 'value');
      sheet.artifact(() => drawPlace(sheet, place, { to: textEdge, read }));
      const width = sheet.width / 2 - mm(29) - plate.side;
      const x = side === 'left' ? plate.side : sheet.width - plate.side - width;
      writeEntries(sheet, { section, entries: here, several, box: { x, y: place.y, width }, align: side === 'left' ? 'right' : 'left' });
    }
  }
  const words = `Seen from above. ${capital(dogWords(snapshot).his)} left is on your left.`;
  const at = { x: plate.side, y: plate.bottom - mm(5), width: mm(60) };
  sheet.tagged(section, 'P', () => sheet.write(words, at, SMALL));
}

function drawPlace({ doc }: Sheet, { x, y }: { x: number; y: number }, line: { to: number; read: boolean }): void {
  const radius = mm(1.7);
  const away = Math.sign(line.to - x);
  doc.lineWidth(0.6).strokeColor(MARK).moveTo(x + away * radius, y).lineTo(line.to, y).stroke();
  doc.circle(x, y, radius);
  if (line.read) doc.fill(INK);
  else doc.lineWidth(mm(0.6)).fillAndStroke('white', INK);
}

function writeEntries(
  sheet: Sheet,
  set: { section: ReturnType<Sheet['group']>; entries: Entry[]; several: boolean; box: { x: number; y: number; width: number }; align: 'left' | 'right' },
): void {
  const { entries, box, align } = set;
  const doubled = entries.length > 1;
  const valueStyle = ({ joint }: Entry): TextStyle => ({
    size: joint.finding.kind === 'none' ? 13 : doubled ? 15 : 20, leading: 1.25, color: INK, bold: true, align,
  });
  const small: TextStyle = { ...SMALL, align };
  const under = (entry: Entry) => [...(doubled ? [entry.study] : []), ...besideValue(entry.joint)].join('; ');
  const heightOf = (entry: Entry) =>
    sheet.measure(valueOf(entry.joint), box.width, valueStyle(entry)) + sheet.measure(under(entry), box.width, small);
  const name = { ...NAME, align };
  const nameHeight = NAME.size * NAME.leading;
  // The leader meets the first value; a doubled joint is centred on it as a whole.
  const firstHeight = entries[0] ? sheet.measure(valueOf(entries[0].joint), box.width, valueStyle(entries[0])) : 0;
  const full = entries.reduce((sum, entry) => sum + heightOf(entry) + mm(1.5), nameHeight);
  let y = doubled ? box.y - full / 2 : box.y - nameHeight - firstHeight / 2;
  const joint = entries[0]?.joint;
  if (!joint) return;
  sheet.tagged(set.section, 'H2', () => sheet.write(capital(jointName(joint)), { ...box, y }, name));
  y += nameHeight;
  for (const entry of entries) {
    y += sheet.tagged(set.section, 'P', () => {
      const height = sheet.write(valueOf(entry.joint), { ...box, y }, valueStyle(entry));
      return height + sheet.write(under(entry), { ...box, y: y + height }, small);
    });
    y += mm(1.5);
  }
}
