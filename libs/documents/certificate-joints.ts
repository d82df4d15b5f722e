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

const NAME: TextStyle = { size: 10, leading: 1.35, color: QUIET };
const SMALL: TextStyle = { size: 9, leading: 1.35, color: QUIET };
const NAME_HEIGHT = NAME.size * NAME.leading;
const BETWEEN_ENTRIES = mm(1.2);
const BETWEEN_STACKS = mm(3);

/** Each joint's reading beside its place on the dog; a filled place was read, an open one was not. */
export function drawJoints(sheet: Sheet, snapshot: CertificateSnapshot, plate: Plate): void {
  const room = plate.bottom - plate.top;
  const length = Math.min(room, mm(118));
  const dog = { x: sheet.width / 2, y: plate.top + (room - length) / 2, scale: length / DOG_LENGTH };
  const section = sheet.group(sheet.root, 'Sect');
  const alt = `${snapshot.dog.callName} seen from above, head at the top; the readings stand beside the joints`;
  sheet.tagged(section, 'Figure', () => drawDogFromAbove(sheet.doc, dog), { alt });
  const width = sheet.width / 2 - mm(29) - plate.side;
  for (const side of ['left', 'right'] as const) {
    const outward = side === 'left' ? -1 : 1;
    const x = side === 'left' ? plate.side : sheet.width - plate.side - width;
    const stacks = (['elbow', 'hip'] as const).flatMap((joint) => {
      const place = { x: dog.x + outward * JOINT_PLACES[joint].x * dog.scale, y: dog.y + JOINT_PLACES[joint].y * dog.scale };
      const stack = stackOf(sheet, snapshot, { joint, side, place, width });
      return stack ? [stack] : [];
    });
    keepApart(stacks, plate);
    for (const stack of stacks) {
      sheet.artifact(() => drawPlace(sheet, stack, dog.x + outward * mm(27)));
      writeStack(sheet, section, stack, { x, width, align: side === 'left' ? 'right' : 'left' });
    }
  }
  const words = `Seen from above. ${capital(dogWords(snapshot).his)} left is on your left.`;
  sheet.tagged(section, 'P', () => sheet.write(words, { x: plate.side, y: plate.bottom - mm(4.5), width: mm(78) }, SMALL));
}

function valueStyle(entry: Entry, entries: Entry[]): TextStyle {
  return { size: entry.read ? (entries.length > 1 ? 15 : 20) : 13, leading: 1.25, color: INK, bold: true };
}

function stackOf(
  sheet: Sheet,
  snapshot: CertificateSnapshot,
  at: { joint: JointOnPaper['joint']; side: JointOnPaper['side']; place: Stack['place']; width: number },
): Stack | null {
  const here = snapshot.studies.flatMap(({ title, joints }) =>
    joints.filter(({ joint, side }) => joint === at.joint && side === at.side).map((joint) => ({ title, joint })),
  );
  const first = here[0];
  if (!first) return null;
  const entries = here.map(({ title, joint }) => ({
    value: valueOf(joint),
    under: [...(here.length > 1 ? [title] : []), ...besideValue(joint)].join('; '),
    read: joint.finding.kind === 'value',
  }));
  const valueHeight = (entry: Entry) => sheet.measure(entry.value, at.width, valueStyle(entry, entries));
  const heights = entries.map((entry) => valueHeight(entry) + sheet.measure(entry.under, at.width, SMALL));
  const height = heights.reduce((sum, each) => sum + each, NAME_HEIGHT) + BETWEEN_ENTRIES * (entries.length - 1);
  const one = entries.length === 1 && entries[0];
  const leaderAt = one ? NAME_HEIGHT + valueHeight(one) / 2 : height / 2;
  return { name: capital(jointName(first.joint)), entries, place: at.place, top: at.place.y - leaderAt, height, leaderAt };
}

/** Long stacks move away from each other and stay on the plate; their leaders then slant. */
function keepApart([upper, lower]: Stack[], plate: Plate): void {
  if (!upper || !lower) return;
  const overlap = upper.top + upper.height + BETWEEN_STACKS - lower.top;
  if (overlap > 0) {
    upper.top -= overlap / 2;
    lower.top += overlap / 2;
  }
  const below = lower.top + lower.height - (plate.bottom - mm(5));
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

function writeStack(sheet: Sheet, section: Element, stack: Stack, column: { x: number; width: number; align: 'left' | 'right' }): void {
  const { align } = column;
  let y = stack.top;
  y += sheet.tagged(section, 'H2', () => sheet.write(stack.name, { ...column, y }, { ...NAME, align }));
  for (const entry of stack.entries) {
    y += sheet.tagged(section, 'P', () => {
      const height = sheet.write(entry.value, { ...column, y }, { ...valueStyle(entry, stack.entries), align });
      return height + sheet.write(entry.under, { ...column, y: y + height }, { ...SMALL, align });
    });
    y += BETWEEN_ENTRIES;
  }
}
