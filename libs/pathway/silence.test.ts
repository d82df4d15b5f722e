import { readExamples } from './examples/read.js';
import { fact } from './examples/random-fact.js';
import { maySend, type Message } from './silence.js';

const { named, rules } = readExamples();
const ask = (example: string, message: Message, now?: string) => {
  const { facts, now: then } = named(example);
  return maySend(message, facts, now ?? then, rules);
};
const result: Message = { kind: 'result', to: 'owner', study: 's1', result: 'qs128' };

describe('whether a message may leave now', () => {
  it('lets the result of a released letter go by day', () => {
    expect(ask('letter outcome unknown', result)).toEqual({ send: true });
  });

  it('keeps a letter for the morning', () => {
    expect(ask('letter outcome unknown', result, '2026-11-25T20:30:00.000Z')).toEqual({ send: false, reason: 'NIGHT', then: 'keep' });
  });

  it('keeps letters and drops reminders when the dog has died', () => {
    expect(ask('dog died in care, result waiting', result)).toEqual({ send: false, reason: 'DEATH', then: 'keep' });
    expect(ask('dog died at home before its visit', { kind: 'reminder', to: 'owner', visit: 'v3' })).toEqual({ send: false, reason: 'DEATH', then: 'drop' });
  });

  it('lets a harmed dog’s going-home sheet go, and nothing else', () => {
    expect(ask('harm while asleep', { kind: 'goingHome', to: 'owner', visit: 'v3' })).toEqual({ send: true });
    expect(ask('harm while asleep', { kind: 'bill', to: 'owner' })).toEqual({ send: false, reason: 'HARM', then: 'keep' });
  });

  it('sends no letter to somebody who is not an addressee', () => {
    expect(ask('letter outcome unknown', { ...result, to: 'seller' })).toEqual({ send: false, reason: 'NOT_ADDRESSEE', then: 'drop' });
  });

  it('waits after a sale until the addressees are confirmed', () => {
    expect(ask('dog sold between imaging and result', result)).toEqual({ send: false, reason: 'ADDRESSEE_TO_CONFIRM', then: 'keep' });
  });

  it('drops what a visit no longer needs', () => {
    expect(ask('did not come', { kind: 'reminder', to: 'owner', visit: 'v3' })).toEqual({ send: false, reason: 'VISIT_OVER', then: 'drop' });
    expect(ask('on the day, everything agreed', { kind: 'consentLink', to: 'owner', visit: 'v3' })).toEqual({ send: false, reason: 'ALREADY_ANSWERED', then: 'drop' });
    expect(ask('booked for tomorrow', { kind: 'consentLink', to: 'owner', visit: 'v3' })).toEqual({ send: true });
  });

  it('drops a result that another has replaced or that was taken back', () => {
    expect(ask('appeal read, amended letter released', result)).toEqual({ send: false, reason: 'SUPERSEDED', then: 'drop' });
    expect(ask('result of another dog found after the letter', result)).toEqual({ send: false, reason: 'WITHDRAWN', then: 'drop' });
    expect(ask('letter outcome unknown', { ...result, kind: 'correction' })).toEqual({ send: false, reason: 'NOTHING_TO_CORRECT', then: 'drop' });
  });

  it('chases on the centre’s working days only, once a day, while a clock runs', () => {
    const chase: Message = { kind: 'chase', to: 'centre-weir', study: 's1' };
    expect(ask('never acknowledged: first reminder due', chase)).toEqual({ send: true });
    expect(ask('no reminder on the centre’s holiday', chase)).toEqual({ send: false, reason: 'CENTRE_NOT_WORKING', then: 'keep' });
    expect(ask('letter delivered', chase)).toEqual({ send: false, reason: 'CLOCK_STOPPED', then: 'drop' });
    const { facts, now } = named('never acknowledged: first reminder due');
    const sent = fact('chaseSent', { study: 's1', clock: 'ack', day: '2026-12-01', digest: 'g' }, { id: 'c', at: now });
    expect(maySend(chase, [...facts, sent], now, rules)).toEqual({ send: false, reason: 'DIGEST_SENT_TODAY', then: 'keep' });
  });
});
