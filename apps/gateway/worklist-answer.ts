import { dicomDay, dogAttributes, latin } from '#libs/dicom/dog-attributes';
import { uidOf } from '#libs/dicom/uids';
import type { WorklistEntry } from '#libs/steps/gateway/worklist';

const text = (value: string, most: number): string => latin(value).replaceAll('\\', ' ').trim().slice(0, most);
const code = (value: string, meaning: string) => ({ CodeValue: value, CodingSchemeDesignator: '99COTYLA', CodeMeaning: text(meaning, 64) });

/** An entry of the worklist by keywords: the names are in Latin letters alone, which every console shows. */
export function worklistAnswer(entry: WorklistEntry, { station, modality }: { station: string; modality: string }): Record<string, unknown> {
  const what = text(entry.studies.join(', '), 64);
  const views = entry.views.map((view) => code(view.code, view.label));
  return {
    SpecificCharacterSet: 'ISO_IR 100',
    ...dogAttributes(entry.dog),
    AccessionNumber: entry.accession,
    ReferringPhysicianName: '', RequestingPhysician: '',
    StudyInstanceUID: uidOf(entry.visit),
    RequestedProcedureID: shortId(entry.visit), RequestedProcedureDescription: what, RequestedProcedureCodeSequence: [], ReferencedStudySequence: [],
    RequestedProcedurePriority: 'ROUTINE', PatientTransportArrangements: '', InstitutionName: text(entry.practiceName, 64),
    ScheduledProcedureStepSequence: [{
      ScheduledStationAETitle: station, ScheduledProcedureStepStartDate: dicomDay(entry.day), ScheduledProcedureStepStartTime: entry.start.replace(':', '').padEnd(6, '0'), Modality: modality,
      ScheduledPerformingPhysicianName: '', ScheduledProcedureStepDescription: what, ScheduledProtocolCodeSequence: views, ScheduledProcedureStepID: shortId(entry.visit),
      ScheduledStationName: '', ScheduledProcedureStepLocation: '', PreMedication: '', RequestedContrastAgent: '', ScheduledProcedureStepStatus: 'SCHEDULED',
    }],
  };
}

/** 16 signs at most; that they are the visit's is only of use to whoever looks for a fault. */
const shortId = (uuid: string): string => uuid.replaceAll('-', '').slice(-16).toUpperCase();
