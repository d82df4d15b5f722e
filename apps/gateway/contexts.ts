import dimse from 'dcmjs-dimse';
import type { association } from 'dcmjs-dimse';
import { COMMITMENT } from '#libs/dicom/commitment';
import { PERFORMED_STEP } from '#libs/dicom/performed-step';
import { EXPLICIT, IMPLICIT, TAKEN } from '#libs/dicom/syntaxes';
import { sopClasses } from '#libs/dicom/uids';

const { PresentationContextResult, SopClass } = dimse.constants;
const ECHO = '1.2.840.10008.1.1';
const SPOKEN = new Set<string>([ECHO, SopClass.ModalityWorklistInformationModelFind, COMMITMENT.sopClass, PERFORMED_STEP]);
const STORED = new Set<string>(Object.values(sopClasses));

/** Accepts of each thing that the other side wants to do the best way that both know, and refuses what is not done here. */
export function chooseContexts(wanted: association.Association): void {
  for (const { context } of wanted.getPresentationContexts()) {
    const syntaxes = syntaxesFor(context.getAbstractSyntaxUid());
    const offered = context.getTransferSyntaxUids();
    const best = syntaxes?.find((syntax) => offered.includes(syntax));
    if (best) context.setResult(PresentationContextResult.Accept, best);
    else context.setResult(syntaxes ? PresentationContextResult.RejectTransferSyntaxesNotSupported : PresentationContextResult.RejectAbstractSyntaxNotSupported);
  }
}

function syntaxesFor(sopClass: string): readonly string[] | undefined {
  if (SPOKEN.has(sopClass)) return [EXPLICIT, IMPLICIT];
  return STORED.has(sopClass) ? TAKEN : undefined;
}
