import type { Finding, JointReading, NumberRule, Protocol, Side, ValueRule } from './types.js';

export interface Problem {
  code:
    | 'JOINT_MISSING'
    | 'JOINT_TWICE'
    | 'JOINT_UNKNOWN'
    | 'VALUE_AND_REASON'
    | 'VALUE_OR_REASON'
    | 'REASON_UNKNOWN'
    | 'NOT_A_NUMBER'
    | 'OUT_OF_RANGE'
    | 'DECIMALS'
    | 'GRADE_UNKNOWN'
    | 'FINDING_UNKNOWN'
    | 'FINDING_MISSING'
    | 'FINDING_WRONG'
    | 'SIDES_DIFFER'
    | 'ASK_HIGH'
    | 'GRADE_TOO_LOW'
    | 'FINDING_ALONE'
    | 'ASK_LESION'
    | 'ASK_UNSHOWN';
  joint?: Side;
  /** A sentence that says what to do. */
  words: string;
  /** "refuse": cannot be meant, nothing is stored. "ask": possible; a person confirms. */
  weight: 'refuse' | 'ask';
}

/**
 * Everything that is wrong or unlikely in an entered reading, in the order of the joints.
 * An empty list means that it can be stored.
 */
export function checkReading(protocol: Protocol, joints: JointReading[]): Problem[] {
  const problems: Problem[] = [];
  for (const { joint } of joints) {
    if (!protocol.joints.includes(joint)) {
      problems.push(refuse('JOINT_UNKNOWN', `"${joint}" is no joint of this protocol. Use ${protocol.joints.join(' or ')}.`));
    }
  }
  for (const side of protocol.joints) {
    const entered = joints.filter(({ joint }) => joint === side);
    const where = `${capital(side)} ${protocol.region}`;
    if (entered.length === 0) problems.push(refuse('JOINT_MISSING', `${where}: give a value, or the reason why there is none.`, side));
    if (entered.length > 1) problems.push(refuse('JOINT_TWICE', `${where}: entered ${entered.length} times. Keep one.`, side));
    if (entered.length === 1) problems.push(...checkJoint(protocol, entered[0]!, where));
  }
  return [...problems, ...checkSides(protocol, joints)];
}

function checkJoint(protocol: Protocol, reading: JointReading, where: string): Problem[] {
  const { joint, value, reason } = reading;
  const problems: Problem[] = [];
  if (value !== undefined && reason !== undefined) {
    problems.push(refuse('VALUE_AND_REASON', `${where}: a joint has a value or a reason why there is none, never both. Remove one.`, joint));
  }
  if (value === undefined && reason === undefined) {
    problems.push(refuse('VALUE_OR_REASON', `${where}: give a value, or the reason why there is none.`, joint));
  }
  if (reason !== undefined && !protocol.noValue.some(({ code }) => code === reason)) {
    problems.push(refuse('REASON_UNKNOWN', `${where}: "${reason}" is no reason of this protocol. Use one of ${protocol.noValue.map(({ code }) => code).join(', ')}.`, joint));
  }
  if (value !== undefined) problems.push(...checkValue(protocol.value, value, where, joint));
  return [...problems, ...checkFindings(protocol, reading, where)];
}

function checkValue(rule: ValueRule, value: number | string, where: string, joint: Side): Problem[] {
  if (rule.kind === 'grade') {
    if (rule.grades.some(({ code }) => code === value)) return [];
    return [refuse('GRADE_UNKNOWN', `${where}: "${value}" is no grade here. Use one of ${rule.grades.map(({ code }) => code).join(', ')}.`, joint)];
  }
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    return [refuse('NOT_A_NUMBER', `${where}: the ${rule.name} must be a number, for example ${rule.min.toFixed(rule.decimals)}.`, joint)];
  }
  const problems = checkNumber(rule, value).map(({ code, words }) => refuse(code, `${where}: ${words}`, joint));
  if (problems.length === 0 && rule.askAbove && value > rule.askAbove.value) {
    problems.push({ code: 'ASK_HIGH', joint, weight: 'ask', words: `${where}: ${value.toFixed(rule.decimals)} is possible but high. ${rule.askAbove.reason} Look at the entry again.` });
  }
  return problems;
}

function checkNumber(rule: Pick<NumberRule, 'min' | 'max' | 'decimals' | 'unit'> & { rangeReason?: string }, value: number) {
  const unit = rule.unit && ` ${rule.unit}`;
  const problems: { code: 'OUT_OF_RANGE' | 'DECIMALS'; words: string }[] = [];
  if (value < rule.min || value > rule.max) {
    const range = `${rule.min.toFixed(rule.decimals)} to ${rule.max.toFixed(rule.decimals)}${unit}`;
    problems.push({ code: 'OUT_OF_RANGE', words: `${value}${unit} is outside ${range}. ${rule.rangeReason ?? ''}`.trim() });
  }
  if (Number(value.toFixed(rule.decimals)) !== value) {
    problems.push({ code: 'DECIMALS', words: `${value} has more than ${rule.decimals} decimals. Enter what the reader wrote.` });
  }
  return problems;
}

function checkFindings(protocol: Protocol, reading: JointReading, where: string): Problem[] {
  const findings = reading.findings ?? {};
  const problems: Problem[] = [];
  for (const code of Object.keys(findings)) {
    if (!protocol.findings.some((finding) => finding.code === code)) {
      problems.push(refuse('FINDING_UNKNOWN', `${where}: "${code}" is not recorded in this protocol. Remove it.`, reading.joint));
    }
  }
  for (const finding of protocol.findings) {
    const found = findings[finding.code];
    if (found === undefined) {
      if (finding.requiredWithValue && reading.value !== undefined) {
        problems.push(refuse('FINDING_MISSING', `${where}: say "${finding.label}" too.`, reading.joint));
      }
      continue;
    }
    const wrong = wrongFinding(finding, found);
    if (wrong) problems.push(refuse('FINDING_WRONG', `${where}, ${finding.label}: ${wrong}`, reading.joint));
    else problems.push(...aloneFinding(protocol, finding, reading, where), ...lowGrade(protocol, finding, reading, where));
  }
  return [...problems, ...unshownGrade(protocol, reading, where)];
}

function wrongFinding(finding: Finding, found: boolean | string | number): string | undefined {
  if (finding.kind === 'yesNo') return typeof found === 'boolean' ? undefined : 'say yes or no.';
  if (finding.kind === 'choice') {
    return finding.choices.some(({ code }) => code === found) ? undefined : `"${found}" is not offered. Use one of ${finding.choices.map(({ code }) => code).join(', ')}.`;
  }
  if (typeof found !== 'number' || !Number.isFinite(found)) return 'enter a number.';
  return checkNumber(finding, found)[0]?.words;
}

function aloneFinding(protocol: Protocol, { onlyWith, label, ...finding }: Finding, { joint, findings = {} }: JointReading, where: string): Problem[] {
  if (!onlyWith || !isPositive(findings[finding.code])) return [];
  const other = protocol.findings.find(({ code }) => code === onlyWith.finding)!;
  if (onlyWith.answers.some((answer) => answer === findings[other.code])) return [];
  const answers = other.kind === 'choice' ? other.choices.filter(({ code }) => onlyWith.answers.includes(code)).map(({ words }) => `"${words}"`) : onlyWith.answers;
  return [refuse('FINDING_ALONE', `${where}: "${label}" is entered, so "${other.label}" is ${answers.join(' or ')}. Correct one of the two.`, joint)];
}

function lowGrade(protocol: Protocol, finding: Finding, { joint, value, findings }: JointReading, where: string): Problem[] {
  if (finding.kind !== 'choice' || protocol.value.kind !== 'grade') return [];
  const choice = finding.choices.find(({ code }) => code === findings?.[finding.code]);
  const order = protocol.value.grades.map(({ code }) => code);
  const least = order.indexOf(choice?.gradeAtLeast ?? '');
  const given = order.indexOf(String(value));
  if (given === -1 || given >= least) return [];
  const found = `${where}: ${finding.label.toLowerCase()} "${choice!.words}"`;
  if (finding.bindsGrade) return [refuse('GRADE_TOO_LOW', `${found} cannot be grade ${value}: it makes grade ${choice!.gradeAtLeast} or more. Look at both in what the reader wrote; if both stand there, ask the reader.`, joint)];
  return [{ code: 'ASK_LESION', joint, weight: 'ask', words: `${found} usually goes with grade ${choice!.gradeAtLeast} or more, and ${value} was entered. Ask the reader.` }];
}

/** Asked only when everything that makes the grade is given, and nothing beside it whose weight schemes do not agree on. */
function unshownGrade(protocol: Protocol, { joint, value, findings = {} }: JointReading, where: string): Problem[] {
  const rule = protocol.value;
  if (rule.kind !== 'grade' || !rule.shownBy) return [];
  const order = rule.grades.map(({ code }) => code);
  const given = order.indexOf(String(value));
  const shows = protocol.findings.flatMap((finding) => (finding.kind === 'choice' && rule.shownBy!.includes(finding.code) ? [finding] : []));
  const named = shows.some(({ choices }) => choices.some(({ gradeAtLeast }) => gradeAtLeast === value));
  if (given === -1 || !named || protocol.findings.some((other) => !rule.shownBy!.includes(other.code) && isPositive(findings[other.code]))) return [];
  const reached = shows.map(({ code, choices }) => choices.find((choice) => choice.code === findings[code])).map((choice) => choice && order.indexOf(choice.gradeAtLeast ?? ''));
  if (reached.some((place) => place === undefined || place >= given)) return [];
  return [{ code: 'ASK_UNSHOWN', joint, weight: 'ask', words: `${where}: grade ${value} was entered, and nothing recorded beside it comes up to that. Look at the entry again, then ask the reader.` }];
}

const isPositive = (found: boolean | string | number | undefined) => found !== undefined && found !== false && found !== 0;

function checkSides(protocol: Protocol, joints: JointReading[]): Problem[] {
  return protocol.findings.flatMap((finding) => {
    if (!finding.sameOnBothSides) return [];
    const given = new Set(joints.map(({ findings }) => findings?.[finding.code]).filter((found) => found !== undefined));
    if (given.size < 2) return [];
    return [refuse('SIDES_DIFFER', `${finding.label}: left and right differ (${[...given].join(', ')}). Both joints of one reading carry the same.`)];
  });
}

function refuse(code: Problem['code'], words: string, joint?: Side): Problem {
  return joint ? { code, joint, weight: 'refuse', words } : { code, weight: 'refuse', words };
}

const capital = (word: string) => word[0]!.toUpperCase() + word.slice(1);
