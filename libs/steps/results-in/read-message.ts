import { said } from '#libs/words/said';
import { FORMAT, MOST_READINGS, messageReading, resultMessage, statedReading } from '#libs/contracts/results-in';
import type { Joint } from '#libs/contracts/common';
import type { Protocol } from '#libs/science/protocols/types';
import { asCame, readStated, toldOf, type Read } from './stated.js';

/** Readings of a message in our own form; see docs/results-in.md. */
export function readMessage(body: unknown): Read[] {
  const message = resultMessage.safeParse(body);
  if (!message.success) return [{ place: 0, told: [said('This is no message of readings. It is {form}, with 1 to {most} readings.', { form: `{ "format": "${FORMAT}", "readings": [ … ] }`, most: MOST_READINGS })], said: asCame('Message', body) }];
  return message.data.readings.map((reading, i) => readOne(reading, i + 1));
}

function readOne(input: unknown, place: number): Read {
  const came = typeof input === 'object' && input !== null ? Object.entries(input).flatMap(([what, value]) => asCame(what, value)) : asCame('Reading', input);
  const form = messageReading.safeParse(input);
  const common = readStated(typeof input === 'object' && input !== null ? (input as Record<string, unknown>) : {}, statedReading);
  if ('told' in common) return { place, told: common.told, said: came };
  if (!form.success) return { place, said: came, told: toldOf(form.error.issues) };
  const joints: Joint[] = Object.entries(form.data.joints).map(([joint, { value, reason, findings }]) => ({ joint, ...(value !== undefined && { value }), ...(reason !== undefined && { reason }), ...(findings && { findings }) }));
  return { place, reading: common.reading, said: came, joints: (protocol) => ({ joints: gradesAsText(protocol, joints), problems: [] }) };
}

/** The grade 1 may come as a number or as text; it is a step and no measure. */
export const gradesAsText = (protocol: Protocol, joints: Joint[]): Joint[] =>
  joints.map((joint) => (protocol.value.kind === 'grade' && typeof joint.value === 'number' ? { ...joint, value: String(joint.value) } : joint));
