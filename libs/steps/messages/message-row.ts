export interface MessageRow {
  id: string;
  orderId: string | null;
  practiceId: string | null;
  kind: string;
  personId: string | null;
  toName: string;
  toEmail: string;
  body: { template: string; data: Record<string, unknown> };
  documents: string[];
  subjectId: string | null;
  state: string;
}

export const MESSAGE_COLUMNS = `id, order_id AS "orderId", practice_id AS "practiceId", kind, person_id AS "personId", to_name AS "toName", to_email AS "toEmail", body, documents, subject_id AS "subjectId", state`;
