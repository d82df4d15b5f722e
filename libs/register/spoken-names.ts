import { stepLabel } from '#libs/pathway/words';
import { nameAtDesk, nameAtDeskNow } from '#libs/science/protocols/catalogue';
import { t } from '#libs/words/spoken';

/** As the desk calls a study, to whoever asked. */
export const studyName = (study: Parameters<typeof nameAtDesk>[0]): string => t.known(nameAtDesk(study));
export const studyNameNow = (code: string): string => t.known(nameAtDeskNow(code));
export const stepName = (step: string): string => t.known(stepLabel(step));
