import type { ActionName } from '#libs/contracts/actions/all';
import type { UseCase } from './record/use-case.js';
import { admit } from './admission/admit.js';
import { scanDog } from './admission/scan-dog.js';
import { settleIdentity } from './admission/settle-identity.js';
import { turnAway } from './admission/turn-away.js';
import { acceptEstimate } from './booking/accept-estimate.js';
import { book } from './booking/book.js';
import { cancelVisit } from './booking/cancel-visit.js';
import { checkFitness } from './booking/check-fitness.js';
import { giveAnswers } from './booking/give-answers.js';
import { judgeAnswers } from './booking/judge-answers.js';
import { leaveStudyOut } from './booking/leave-study-out.js';
import { recordMissed } from './booking/record-missed.js';
import { clearCause } from './chase/clear-cause.js';
import { recordCause } from './chase/record-cause.js';
import { recordAutoReply } from './chase/record-auto-reply.js';
import { takeChase } from './chase/take-chase.js';
import { answerStatistics } from './consent/answer-statistics.js';
import { consentSedation } from './consent/consent-sedation.js';
import { consentSendAll } from './consent/consent-send-all.js';
import { consentStudy } from './consent/consent-study.js';
import { withdrawSedation } from './consent/withdraw-sedation.js';
import { withdrawStudy } from './consent/withdraw-study.js';
import { changeCentre } from './dispatch/change-centre.js';
import { resolveSend } from './dispatch/resolve-send.js';
import { sealSupplement } from './dispatch/seal-supplement.js';
import { seal } from './dispatch/seal.js';
import { send } from './dispatch/send.js';
import { tellCentre } from './dispatch/tell-centre.js';
import { tellOfNote } from './dispatch/tell-of-note.js';
import { acknowledge } from './grading/acknowledge.js';
import { rejectFilms } from './grading/reject-films.js';
import { assignFilm } from './imaging/assign-film.js';
import { disownFilm } from './imaging/disown-film.js';
import { endImaging } from './imaging/end-imaging.js';
import { logRoom } from './imaging/log-room.js';
import { stateSize } from './imaging/state-size.js';
import { stopImaging } from './imaging/stop-imaging.js';
import { takeView } from './imaging/take-view.js';
import { addStudy } from './order/add-study.js';
import { agreeTransfer } from './order/agree-transfer.js';
import { cancelOrder } from './order/cancel-order.js';
import { chooseLetterTime } from './order/choose-letter-time.js';
import { confirmAddressees } from './order/confirm-addressees.js';
import { erasePerson } from './order/erase-person.js';
import { handOver } from './order/hand-over.js';
import { liftLegalHold } from './order/lift-legal-hold.js';
import { liftSilence } from './order/lift-silence.js';
import { nameCaseOwner } from './order/name-case-owner.js';
import { namePayer } from './order/name-payer.js';
import { nameSigners } from './order/name-signers.js';
import { openVisit } from './order/open-visit.js';
import { recordDeath } from './order/record-death.js';
import { recordHarm } from './order/record-harm.js';
import { recordTransfer } from './order/record-transfer.js';
import { endStudy } from './quality/end-study.js';
import { judgeView } from './quality/judge-view.js';
import { markFilm } from './quality/mark-film.js';
import { seeProtocolChange } from './quality/see-protocol-change.js';
import { settleViews } from './quality/settle-views.js';
import { giveSheet } from './recovery/give-sheet.js';
import { sendHome } from './recovery/send-home.js';
import { signRecovery } from './recovery/sign-recovery.js';
import { acceptReferral } from './referral/accept-referral.js';
import { closeReferral } from './referral/close-referral.js';
import { offerReferral } from './referral/offer-referral.js';
import { recordCall } from './report/record-call.js';
import { recordOutcome } from './report/record-outcome.js';
import { releaseAgain } from './report/release-again.js';
import { releaseCorrection } from './report/release-correction.js';
import { releaseFilmsRejected } from './report/release-films-rejected.js';
import { releaseLetter } from './report/release-letter.js';
import { resolveLetter } from './report/resolve-letter.js';
import { setPhoneFirst } from './report/set-phone-first.js';
import { acceptResult } from './result/accept-result.js';
import { askAppeal } from './result/ask-appeal.js';
import { closeAppeal } from './result/close-appeal.js';
import { decideAfterDeath } from './result/decide-after-death.js';
import { enterResult } from './result/enter-result.js';
import { explainResult } from './result/explain-result.js';
import { keyResult } from './result/key-result.js';
import { refuseResult } from './result/refuse-result.js';
import { askWhichStands } from './result/ask-which-stands.js';
import { settleConflict } from './result/settle-conflict.js';
import { withdrawResult } from './result/withdraw-result.js';
import { examine } from './sedation/examine.js';
import { recordDrug } from './sedation/record-drug.js';
import { recordEvent } from './sedation/record-event.js';
import { recordReading } from './sedation/record-reading.js';
import { signPlan } from './sedation/sign-plan.js';
import { startSedation } from './sedation/start-sedation.js';
import { topUp } from './sedation/top-up.js';

/** Every action of the pathway and the one file that does it; the compiler refuses a missing one. */
export const useCases: { [A in ActionName]: UseCase<A> } = {
  admit, scanDog, settleIdentity, turnAway,
  acceptEstimate, book, cancelVisit, checkFitness, giveAnswers, judgeAnswers, leaveStudyOut, recordMissed,
  clearCause, recordAutoReply, recordCause, takeChase,
  answerStatistics, consentSedation, consentSendAll, consentStudy, withdrawSedation, withdrawStudy,
  changeCentre, resolveSend, sealSupplement, seal, send, tellCentre, tellOfNote,
  acknowledge, rejectFilms,
  assignFilm, disownFilm, endImaging, logRoom, stateSize, stopImaging, takeView,
  addStudy, agreeTransfer, cancelOrder, chooseLetterTime, confirmAddressees, erasePerson, handOver, liftLegalHold, liftSilence, nameCaseOwner, namePayer, nameSigners, openVisit, recordDeath, recordHarm, recordTransfer,
  endStudy, judgeView, markFilm, seeProtocolChange, settleViews,
  giveSheet, sendHome, signRecovery,
  acceptReferral, closeReferral, offerReferral,
  recordCall, recordOutcome, releaseAgain, releaseCorrection, releaseFilmsRejected, releaseLetter, resolveLetter, setPhoneFirst,
  acceptResult, askAppeal, askWhichStands, closeAppeal, decideAfterDeath, enterResult, explainResult, keyResult, refuseResult, settleConflict, withdrawResult,
  examine, recordDrug, recordEvent, recordReading, signPlan, startSedation, topUp,
};
