import { useState } from 'react';
import type { Joint } from '#libs/contracts/common';
import type { StudyView } from '#libs/contracts/screens/order';
import type { Errors } from '../../../entry/use-entry.js';
import { readEntry, type JointEntry, type JointProblems } from '../../reader/joint-entry.js';
import { JointFields } from '../../reader/JointFields.js';
import '../../reader/reader.css';

/** What was written for each joint, and what is still wrong with it. */
export function useStudyJoints(study: StudyView) {
  const [entries, setEntries] = useState<JointEntry[]>(study.joints.map(({ joint }) => ({ joint, findings: {} })));
  const [problems, setProblems] = useState<JointProblems[]>([]);
  const read = entries.map((e) => readEntry(e, study.value, study.findings));
  return {
    entries,
    problems,
    set: (i: number, entry: JointEntry) => setEntries((all) => all.map((e, n) => (n === i ? entry : e))),
    /** Marks each joint's trouble, and names it for the form that they stand in. */
    missing: (): Errors => {
      setProblems(read.map((r) => r.problems ?? {}));
      return Object.fromEntries(read.flatMap((r, i) => Object.entries(r.problems ?? {}).map(([at, says]) => [`joint ${i} ${at}`, says ?? ''])));
    },
    joints: (): Joint[] => read.flatMap((r) => r.joint ?? []),
  };
}

export function StudyJoints({ study, written }: { study: StudyView; written: ReturnType<typeof useStudyJoints> }) {
  return (
    <div className="joints wide">
      {study.joints.map(({ joint, name }, i) => (
        <JointFields key={joint} name={name} screen={study} entry={written.entries[i] ?? { joint, findings: {} }} onChange={(e) => written.set(i, e)} problems={written.problems[i] ?? {}} />
      ))}
    </div>
  );
}
