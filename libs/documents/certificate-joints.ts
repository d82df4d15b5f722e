import { wordsOnPaper } from '#libs/words/words';
import { besideValue, valueOf } from './certificate-facts.js';
import { dogWords } from './dog-words.js';
import { jointName } from './letter-findings.js';
import { DOG_LENGTH, JOINT_PLACES, drawDogFromAbove } from './print/dog-from-above.js';
import type { TextStyle } from './print/rich-text.js';
import { INK, MARK, QUIET, mm, type Element, type Sheet } from './print/sheet.js';
import type { CertificateSnapshot, JointOnPaper } from './snapshots.js';
import { capital } from './words.js';

interface Plate {
  top: number;
  bottom: number;
  side: number;
}

/** How the readings are set: as large as there is room for, and no smaller than can be read. */
interface Setting {
  name: TextStyle;
  small: TextStyle;
  value: (entry: Entry, entries: Entry[]) => TextStyle;
}

interface Column {
  x: number;
  width: number;
  align: 'left' | 'right';
  /** Where the leaders end, beside the text. */
  edge: number;
  stacks: Stack[];
}

/** The readings of one joint, one or more studies, stacked beside the dog. */
interface Stack {
  name: string;
  entries: Entry[];
  place: { x: number; y: number };
  top: number;
  height: number;
  /** From the top of the stack to where its leader meets it. */
  leaderAt: number;
}

interface Entry {
  value: string;
  under: string;
  read: boolean;
}

const SMALL: TextStyle = { size: 9, leading: 1.35, color: QUIET };
const CAPTION_ROOM = mm(5);
const BETWEEN_ENTRIES = mm(1.2);
const BETWEEN_STACKS = mm(3);
const DOG_HALF = 37.5;

const settingOf = (part: number): Setting => ({
  name: { size: 10 * part, leading: 1.35, color: QUIET },
  small: { ...SMALL, size: SMALL.size * part },
  value: (entry, entries) => ({ size: (entry.read ? (entries.length > 1 ? 15 : 20) : 13) * part, leading: 1.25, color: INK, bold: true }),
});

/** Each joint's reading beside its place on the dog; a filled place was read, an open one was not. */
export function drawJoints(sheet: Sheet, snapshot: CertificateSnapshot, plate: Plate): void {
  const room = plate.bottom - plate.top;
  const length = Math.min(room, mm(118));
  const dog = { x: sheet.width / 2, y: plate.top + (room - length) / 2, scale: length / DOG_LENGTH };
  const section = sheet.group(sheet.root, 'Sect');
  const t = wordsOnPaper(snapshot.lang);
  const alt = t('{dog} seen from above, head at the top; the readings stand beside the joints', { dog: snapshot.dog.callName });
  sheet.tagged(section, 'Figure', () => drawDogFromAbove(sheet.doc, dog), { alt });
  const { columns, setting } = columnsThatFit(sheet, snapshot, plate, dog);
  for (const column of columns) {
    for (const stack of column.stacks) {
      sheet.artifact(() => drawPlace(sheet, stack, column.edge));
      writeStack(sheet, section, stack, { column, setting });
    }
  }
  const words = t('Seen from above. {His} left is on your left.', { His: capital(dogWords(snapshot).his) });
  sheet.tagged(section, 'P', () => sheet.write(words, { x: plate.side, y: plate.bottom - mm(4.5), width: mm(78) }, SMALL));
}

/** Long words, or several studies on one paper, are set smaller, closer to a smaller dog. */
function columnsThatFit(sheet: Sheet, snapshot: CertificateSnapshot, plate: Plate, dog: Dog): { columns: Column[]; setting: Setting } {
  const beside = Math.min(mm(27), DOG_HALF * dog.scale + mm(13));
  const tries = [1, 0.9, 0.8, 0.7].map((part) => {
    const setting = settingOf(part);
    const from = part === 1 ? mm(27) : beside;
    return { setting, columns: (['left', 'right'] as const).map((side) => columnOf(sheet, snapshot, { side, from, plate, dog, setting })) };
  });
  const fits = ({ stacks }: Column) => stacks.every(({ top, height }) => top >= plate.top && top + height <= plate.bottom - CAPTION_ROOM);
  return tries.find(({ columns }) => columns.every(fits)) ?? tries.at(-1)!;
}

interface Dog {
  x: number;
  y: number;
  scale: number;
}

function columnOf(sheet: Sheet, snapshot: CertificateSnapshot, at: { side: JointOnPaper['side']; from: number; plate: Plate; dog: Dog; setting: Setting }): Column {
  const { side, from, plate, dog, setting } = at;
  const outward = side === 'left' ? -1 : 1;
  const width = sheet.width / 2 - from - mm(2) - plate.side;
  const stacks = (['elbow', 'hip'] as const).flatMap((joint) => {
    const place = { x: dog.x + outward * JOINT_PLACES[joint].x * dog.scale, y: dog.y + JOINT_PLACES[joint].y * dog.scale };
    const stack = stackOf(sheet, snapshot, { joint, side, place, width, setting });
    return stack ? [stack] : [];
  });
  keepApart(stacks, plate);
  return { x: side === 'left' ? plate.side : sheet.width - plate.side - width, width, align: side === 'left' ? 'right' : 'left', edge: dog.x + outward * from, stacks };
}

function stackOf(
  sheet: Sheet,
  snapshot: CertificateSnapshot,
  at: { joint: JointOnPaper['joint']; side: JointOnPaper['side']; place: Stack['place']; width: number; setting: Setting },
): Stack | null {
  const here = snapshot.studies.flatMap(({ title, joints }) =>
    joints.filter(({ joint, side }) => joint === at.joint && side === at.side).map((joint) => ({ title, joint })),
  );
  const first = here[0];
  if (!first) return null;
  const t = wordsOnPaper(snapshot.lang);
  const { name, small, value } = at.setting;
  const entries = here.map(({ title, joint }) => ({
    value: valueOf(joint),
    under: [...(here.length > 1 ? [title] : []), ...besideValue(joint, t)].join('; '),
    read: joint.finding.kind === 'value',
  }));
  const nameHeight = name.size * name.leading;
  const valueHeight = (entry: Entry) => sheet.measure(entry.value, at.width, value(entry, entries));
  const heights = entries.map((entry) => valueHeight(entry) + sheet.measure(entry.under, at.width, small));
  const height = heights.reduce((sum, each) => sum + each, nameHeight) + BETWEEN_ENTRIES * (entries.length - 1);
  const one = entries.length === 1 && entries[0];
  const leaderAt = one ? nameHeight + valueHeight(one) / 2 : height / 2;
  return { name: capital(jointName(first.joint, t)), entries, place: at.place, top: at.place.y - leaderAt, height, leaderAt };
}

/** Long stacks move away from each other and stay on the plate; their leaders then slant. */
function keepApart([upper, lower]: Stack[], plate: Plate): void {
  if (!upper || !lower) return;
  const overlap = upper.top + upper.height + BETWEEN_STACKS - lower.top;
  if (overlap > 0) {
    upper.top -= overlap / 2;
    lower.top += overlap / 2;
  }
  const above = plate.top - upper.top;
  if (above > 0) {
    upper.top += above;
    lower.top += Math.max(0, upper.top + upper.height + BETWEEN_STACKS - lower.top);
  }
  const below = lower.top + lower.height - (plate.bottom - CAPTION_ROOM);
  if (below <= 0) return;
  lower.top -= below;
  upper.top = Math.min(upper.top, lower.top - BETWEEN_STACKS - upper.height);
}

function drawPlace({ doc }: Sheet, stack: Stack, edge: number): void {
  const { x, y } = stack.place;
  const radius = mm(1.7);
  const away = Math.sign(edge - x);
  const bend = edge - away * mm(5);
  doc.lineWidth(0.6).strokeColor(MARK).moveTo(x + away * radius, y).lineTo(bend, y).lineTo(edge, stack.top + stack.leaderAt).stroke();
  doc.circle(x, y, radius);
  if (stack.entries.some(({ read }) => read)) doc.fill(INK);
  else doc.lineWidth(mm(0.6)).fillAndStroke('white', INK);
}

function writeStack(sheet: Sheet, section: Element, stack: Stack, { column, setting }: { column: Column; setting: Setting }): void {
  const { x, width, align } = column;
  let y = stack.top;
  y += sheet.tagged(section, 'H2', () => sheet.write(stack.name, { x, y, width }, { ...setting.name, align }));
  for (const entry of stack.entries) {
    y += sheet.tagged(section, 'P', () => {
      const height = sheet.write(entry.value, { x, y, width }, { ...setting.value(entry, stack.entries), align });
      return height + sheet.write(entry.under, { x, y: y + height, width }, { ...setting.small, align });
    });
    y += BETWEEN_ENTRIES;
  }
}
