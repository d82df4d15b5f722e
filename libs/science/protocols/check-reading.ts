import { figure, said, type Figure, type Said } from '#libs/words/said';
import type { Tellable } from '#libs/words/said-error';
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
  told: Tellable;
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
      problems.push(refuse('JOINT_UNKNOWN', said('“{joint}” is no joint of this protocol. Use {joints}.', { joint, joints: protocol.joints.join(', ') })));
    }
  }
  for (const side of protocol.joints) {
    const entered = joints.filter(({ joint }) => joint === side);
    const where = said(`${capital(side)} ${protocol.region}`);
    if (entered.length === 0) problems.push(refuse('JOINT_MISSING', at(where, said('give a value, or the reason why there is none.')), side));
    if (entered.length > 1) problems.push(refuse('JOINT_TWICE', at(where, said('entered {times} times. Keep one.', { times: entered.length })), side));
    if (entered.length === 1) problems.push(...checkJoint(protocol, entered[0]!, where));
  }
  return [...problems, ...checkSides(protocol, joints)];
}

function checkJoint(protocol: Protocol, reading: JointReading, where: Said): Problem[] {
  const { joint, value, reason } = reading;
  const problems: Problem[] = [];
  if (value !== undefined && reason !== undefined) {
    problems.push(refuse('VALUE_AND_REASON', at(where, said('a joint has a value or a reason why there is none, never both. Remove one.')), joint));
  }
  if (value === undefined && reason === undefined) {
    problems.push(refuse('VALUE_OR_REASON', at(where, said('give a value, or the reason why there is none.')), joint));
  }
  if (reason !== undefined && !protocol.noValue.some(({ code }) => code === reason)) {
    problems.push(refuse('REASON_UNKNOWN', at(where, said('“{reason}” is no reason of this protocol. Use one of {reasons}.', { reason, reasons: protocol.noValue.map(({ code }) => code).join(', ') })), joint));
  }
  if (value !== undefined) problems.push(...checkValue(protocol.value, value, where, joint));
  return [...problems, ...checkFindings(protocol, reading, where)];
}

function checkValue(rule: ValueRule, value: number | string, where: Said, joint: Side): Problem[] {
  if (rule.kind === 'grade') {
    if (rule.grades.some(({ code }) => code === value)) return [];
    return [refuse('GRADE_UNKNOWN', at(where, said('“{value}” is no grade here. Use one of {grades}.', { value: String(value), grades: rule.grades.map(({ code }) => code).join(', ') })), joint)];
  }
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    return [refuse('NOT_A_NUMBER', at(where, said('the {name} must be a number, for example {example}.', { name: said(rule.name), example: figure(rule.min, rule.decimals) })), joint)];
  }
  const problems = checkNumber(rule, value).map(({ code, told }) => refuse(code, at(where, told), joint));
  if (problems.length === 0 && rule.askAbove && value > rule.askAbove.value) {
    problems.push({ code: 'ASK_HIGH', joint, weight: 'ask', told: at(where, said('{value} is possible but high. {why} Look at the entry again.', { value: figure(value, rule.decimals), why: said(rule.askAbove.reason) })) });
  }
  return problems;
}

function checkNumber(rule: Pick<NumberRule, 'min' | 'max' | 'decimals' | 'unit'> & { rangeReason?: string }, value: number) {
  const unit = rule.unit && ` ${rule.unit}`;
  const problems: { code: 'OUT_OF_RANGE' | 'DECIMALS'; told: Tellable }[] = [];
  if (value < rule.min || value > rule.max) {
    const range = { value: asTyped(value, unit), from: figure(rule.min, rule.decimals), to: figure(rule.max, rule.decimals, unit) };
    problems.push({ code: 'OUT_OF_RANGE', told: rule.rangeReason ? said('{value} is outside {from} to {to}. {why}', { ...range, why: said(rule.rangeReason) }) : said('{value} is outside {from} to {to}.', range) });
  }
  if (Number(value.toFixed(rule.decimals)) !== value) {
    problems.push({ code: 'DECIMALS', told: said('{value} has more than {decimals} decimals. Enter what the reader wrote.', { value: asTyped(value), decimals: rule.decimals }) });
  }
  return problems;
}

function checkFindings(protocol: Protocol, reading: JointReading, where: Said): Problem[] {
  const findings = reading.findings ?? {};
  const problems: Problem[] = [];
  for (const code of Object.keys(findings)) {
    if (!protocol.findings.some((finding) => finding.code === code)) {
      problems.push(refuse('FINDING_UNKNOWN', at(where, said('“{finding}” is not recorded in this protocol. Remove it.', { finding: code })), reading.joint));
    }
  }
  for (const finding of protocol.findings) {
    const found = findings[finding.code];
    if (found === undefined) {
      if (finding.requiredWithValue && reading.value !== undefined) {
        problems.push(refuse('FINDING_MISSING', at(where, said('say “{finding}” too.', { finding: said(finding.label) })), reading.joint));
      }
      continue;
    }
    const wrong = wrongFinding(finding, found);
    if (wrong) problems.push(refuse('FINDING_WRONG', at(where, said('{where}: {why}', { where: said(finding.label), why: wrong })), reading.joint));
    else problems.push(...aloneFinding(protocol, finding, reading, where), ...lowGrade(protocol, finding, reading, where));
  }
  return [...problems, ...unshownGrade(protocol, reading, where)];
}

function wrongFinding(finding: Finding, found: boolean | string | number): Tellable | undefined {
  if (finding.kind === 'yesNo') return typeof found === 'boolean' ? undefined : said('say yes or no.');
  if (finding.kind === 'choice') {
    return finding.choices.some(({ code }) => code === found) ? undefined : said('“{found}” is not offered. Use one of {choices}.', { found: String(found), choices: finding.choices.map(({ code }) => code).join(', ') });
  }
  if (typeof found !== 'number' || !Number.isFinite(found)) return said('enter a number.');
  return checkNumber(finding, found)[0]?.told;
}

function aloneFinding(protocol: Protocol, { onlyWith, label, ...finding }: Finding, { joint, findings = {} }: JointReading, where: Said): Problem[] {
  if (!onlyWith || !isPositive(findings[finding.code])) return [];
  const other = protocol.findings.find(({ code }) => code === onlyWith.finding)!;
  if (onlyWith.answers.some((answer) => answer === findings[other.code])) return [];
  const [first, ...more]: Said[] = other.kind === 'choice' ? other.choices.filter(({ code }) => onlyWith.answers.includes(code)).map(({ words }) => said('“{words}”', { words: said(words) })) : onlyWith.answers.map((answer) => said(String(answer)));
  return [refuse('FINDING_ALONE', at(where, said('“{finding}” is entered, so “{other}” is {answers}. Correct one of the two.', { finding: said(label), other: said(other.label), answers: more.reduce((all, one) => said('{all} or {one}', { all, one }), first!) })), joint)];
}

function lowGrade(protocol: Protocol, finding: Finding, { joint, value, findings }: JointReading, where: Said): Problem[] {
  if (finding.kind !== 'choice' || protocol.value.kind !== 'grade') return [];
  const choice = finding.choices.find(({ code }) => code === findings?.[finding.code]);
  const order = protocol.value.grades.map(({ code }) => code);
  const least = order.indexOf(choice?.gradeAtLeast ?? '');
  const given = order.indexOf(String(value));
  if (given === -1 || given >= least) return [];
  const found = { finding: said(finding.label), found: said(choice!.words), grade: String(value), least: choice!.gradeAtLeast! };
  if (finding.bindsGrade) return [refuse('GRADE_TOO_LOW', at(where, said('{finding}: “{found}” cannot be grade {grade}: it makes grade {least} or more. Look at both in what the reader wrote; if both stand there, ask the reader.', found)), joint)];
  return [{ code: 'ASK_LESION', joint, weight: 'ask', told: at(where, said('{finding}: “{found}” usually goes with grade {least} or more, and {grade} was entered. Ask the reader.', found)) }];
}

/** Asked only when everything that makes the grade is given, and nothing beside it whose weight schemes do not agree on. */
function unshownGrade(protocol: Protocol, { joint, value, findings = {} }: JointReading, where: Said): Problem[] {
  const rule = protocol.value;
  if (rule.kind !== 'grade' || !rule.shownBy) return [];
  const order = rule.grades.map(({ code }) => code);
  const given = order.indexOf(String(value));
  const shows = protocol.findings.flatMap((finding) => (finding.kind === 'choice' && rule.shownBy!.includes(finding.code) ? [finding] : []));
  const named = shows.some(({ choices }) => choices.some(({ gradeAtLeast }) => gradeAtLeast === value));
  if (given === -1 || !named || protocol.findings.some((other) => !rule.shownBy!.includes(other.code) && isPositive(findings[other.code]))) return [];
  const reached = shows.map(({ code, choices }) => choices.find((choice) => choice.code === findings[code])).map((choice) => choice && order.indexOf(choice.gradeAtLeast ?? ''));
  if (reached.some((place) => place === undefined || place >= given)) return [];
  return [{ code: 'ASK_UNSHOWN', joint, weight: 'ask', told: at(where, said('grade {grade} was entered, and nothing recorded beside it comes up to that. Look at the entry again, then ask the reader.', { grade: String(value) })) }];
}

const isPositive = (found: boolean | string | number | undefined) => found !== undefined && found !== false && found !== 0;

function checkSides(protocol: Protocol, joints: JointReading[]): Problem[] {
  return protocol.findings.flatMap((finding) => {
    if (!finding.sameOnBothSides) return [];
    const given = new Set(joints.map(({ findings }) => findings?.[finding.code]).filter((found) => found !== undefined));
    if (given.size < 2) return [];
    return [refuse('SIDES_DIFFER', at(said(finding.label), said('left and right differ ({given}). Both joints of one reading carry the same.', { given: [...given].join(', ') })))];
  });
}

function refuse(code: Problem['code'], told: Tellable, joint?: Side): Problem {
  return joint ? { code, joint, weight: 'refuse', told } : { code, weight: 'refuse', told };
}

const at = (where: Said, why: Tellable): Tellable => said('{where}: {why}', { where, why });

/** With the decimals that were typed. */
const asTyped = (value: number, unit = ''): Figure | string => (/e/.test(String(value)) ? `${value}${unit}` : figure(value, String(value).split('.')[1]?.length ?? 0, unit));

const capital = (word: string) => word[0]!.toUpperCase() + word.slice(1);
