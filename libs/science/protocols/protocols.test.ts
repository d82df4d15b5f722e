import { allProtocols, currentProtocols, findProtocol } from './catalogue.js';

describe('the shipped protocols', () => {
  it('are found by code and version, and only then', () => {
    expect(findProtocol('hipLaxity', '1')?.consentText).toBe('lax-1');
    expect(findProtocol('hipLaxity', '2')?.consentText).toBe('lax-2');
    expect(findProtocol('hipLaxity', '9')).toBeUndefined();
    expect(findProtocol('knee', '1')).toBeUndefined();
  });

  it('offer the newest version of each code', () => {
    expect(currentProtocols().map(({ code, version }) => `${code}@${version}`)).toEqual(['hipLaxity@2', 'hipLoaded@1', 'hipExtended@1', 'elbow@2']);
  });

  it.each(allProtocols().map((protocol) => [`${protocol.code}@${protocol.version}`, protocol] as const))('%s is a complete row', (_, protocol) => {
    const unique = (codes: string[]) => expect(new Set(codes).size).toBe(codes.length);
    unique(protocol.views.map(({ code }) => code));
    unique(protocol.noValue.map(({ code }) => code));
    unique(protocol.findings.map(({ code }) => code));
    expect(protocol.joints).toEqual(['left', 'right']);
    expect(protocol.views.some(({ required }) => required)).toBe(true);
    expect(protocol.views.every(({ checklist }) => checklist.length > 0)).toBe(true);
    for (const { device } of protocol.views) if (device) expect(protocol.equipment).toContain(device);
    expect(protocol.noValue.map(({ code }) => code)).toContain('notImaged');
    expect(protocol.sources.every(({ citation }) => citation.length > 10)).toBe(true);
  });

  it('put the answers of each finding in words, and name only findings and grades that they have', () => {
    for (const { findings, value } of allProtocols()) {
      const [codes, grades] = [findings.map(({ code }) => code), value.kind === 'grade' ? value.grades.map(({ code }) => code) : []];
      expect(codes).toEqual(expect.arrayContaining([...(value.kind === 'grade' ? value.shownBy ?? [] : []), ...findings.flatMap(({ onlyWith }) => onlyWith?.finding ?? [])]));
      expect(grades).toEqual(expect.arrayContaining(findings.flatMap((f) => (f.kind === 'choice' ? f.choices.flatMap(({ gradeAtLeast }) => gradeAtLeast ?? []) : []))));
    }
  });

  it('add to an elbow’s first version and take nothing from it', () => {
    const [before, now] = [findProtocol('elbow', '1')!, findProtocol('elbow', '2')!];
    expect(now.findings).toEqual(expect.arrayContaining(before.findings));
    expect(now.value).toMatchObject(before.value);
    expect([now.views, now.noValue, now.dog, now.consentText]).toEqual([before.views, before.noValue, before.dog, before.consentText]);
  });

  it('share the extended view, so that one exposure may serve two studies', () => {
    const [laxity, extended] = [findProtocol('hipLaxity', '2')!, findProtocol('hipExtended', '1')!];
    expect(laxity.views[0]).toEqual(extended.views[0]);
  });

  it('never print a word that judges the dog', () => {
    const printed = JSON.stringify(allProtocols().map(({ sources: _sources, ...row }) => row));
    expect(printed).not.toMatch(/hip score|\btotal\b|\bpass(ed)?\b|\bfail|\bclear\b|normal range|preliminary/i);
  });

  it('say of the invented one that it is invented, in its name and its sources', () => {
    const invented = allProtocols().filter((protocol) => protocol.invented);
    expect(invented.map(({ code }) => code)).toEqual(['hipLoaded']);
    expect(invented[0]!.name).toContain('invented');
    expect(invented[0]!.sources[0]!.citation).toContain('invented');
  });
});
