import { performedState, readPerformed } from './performed-step.js';

describe('what a machine says of its own work', () => {
  it('is read with its doses in their units', () => {
    const said = readPerformed({
      PerformedProcedureStepStartDate: '20261129', PerformedProcedureStepStartTime: '101112.5', TotalNumberOfExposures: '4', ImageAndFluoroscopyAreaDoseProduct: 0.31, EntranceDose: '0.002', DistanceSourceToDetector: 1000,
      ExposureDoseSequence: [{ KVP: '66', XRayTubeCurrentInuA: '200000', ExposureTime: '25' }, { KVP: 68, ExposureInuAs: 5200 }, { RadiationMode: 'PULSED' }],
      PerformedSeriesSequence: [{ ProtocolName: 'Hips', ReferencedImageSequence: [{ ReferencedSOPInstanceUID: '1.2.3' }, { ReferencedSOPInstanceUID: '../4' }] }],
    });
    // 200 mA for 25 ms are 5 mAs.
    expect(said).toEqual({ started: '2026-11-29T10:11', what: 'Hips', exposures: 4, areaDose: 0.31, entranceDose: 0.2, distanceCm: 100, each: [{ kv: 66, mas: 5 }, { kv: 68, mas: 5.2 }], images: ['1.2.3'] });
  });

  it('leaves out what is missing or makes no sense', () => {
    expect(readPerformed({ TotalNumberOfExposures: 'many', ImageAndFluoroscopyAreaDoseProduct: -1, PerformedProcedureStepStartDate: '20261350', PerformedProcedureStepStartTime: '990000', PerformedSeriesSequence: 'no list', ExposureDoseSequence: [] })).toEqual({});
  });

  it('has a state, another one, or none', () => {
    expect(['COMPLETED', 'IN PROGRESS', 'DISCONTINUED', 'TIRED', undefined].map((PerformedProcedureStepStatus) => performedState({ PerformedProcedureStepStatus }))).toEqual(['completed', 'inProgress', 'discontinued', 'unknown', undefined]);
  });
});
