import { FORMAT, MOST_READINGS, messageReading, resultMessage, statedReading } from '#libs/contracts/results-in';
import type { Joint } from '#libs/contracts/common';
import type { Protocol } from '#libs/science/protocols/types';
import { readStated, told, wordsOf, type Read } from './stated.js';

/** Readings of a message in our own form; see docs/results-in.md. */
export function readMessage(body: unknown): Read[] {
  const message = resultMessage.safeParse(body);
  if (!message.success) return [{ place: 0, words: `This is no message of readings. It is { "format": "${FORMAT}", "readings": [ … ] }, with 1 to ${MOST_READINGS} readings.`, said: told('Message', body) }];
  return message.data.readings.map((reading, i) => readOne(reading, i + 1));
}

function readOne(input: unknown, place: number): Read {
  const said = typeof input === 'object' && input !== null ? Object.entries(input).flatMap(([what, value]) => told(what, value)) : told('Reading', input);
  const form = messageReading.safeParse(input);
  const common = readStated(typeof input === 'object' && input !== null ? (input as Record<string, unknown>) : {}, statedReading);
  if ('words' in common) return { place, words: common.words, said };
  if (!form.success) return { place, said, words: wordsOf(form.error.issues) };
  const joints: Joint[] = Object.entries(form.data.joints).map(([joint, { value, reason, findings }]) => ({ joint, ...(value !== undefined && { value }), ...(reason !== undefined && { reason }), ...(findings && { findings }) }));
  return { place, reading: common.reading, said, joints: (protocol) => ({ joints: gradesAsText(protocol, joints), problems: [] }) };
}

/** The grade 1 may come as a number or as text; it is a step and no measure. */
export const gradesAsText = (protocol: Protocol, joints: Joint[]): Joint[] =>
  joints.map((joint) => (protocol.value.kind === 'grade' && typeof joint.value === 'number' ? { ...joint, value: String(joint.value) } : joint));
