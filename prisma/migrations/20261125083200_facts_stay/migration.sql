-- What was published, decided, said or signed stays as it is: changing or removing it is refused with code 55000.

CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION '% is append-only: % refused', TG_TABLE_NAME, TG_OP USING ERRCODE = '55000';
END
$$;

DO $$
DECLARE
  facts text;
BEGIN
  FOREACH facts IN ARRAY ARRAY[
    'revision', 'assessment', 'remark', 'disposition', 'sign_off', 'sign_off_void', 'ledger_event'
  ] LOOP
    EXECUTE format(
      'CREATE TRIGGER %I BEFORE UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION refuse_change()',
      facts || '_stays', facts);
    EXECUTE format(
      'CREATE TRIGGER %I BEFORE TRUNCATE ON %I FOR EACH STATEMENT EXECUTE FUNCTION refuse_change()',
      facts || '_is_kept', facts);
  END LOOP;
END
$$;

-- A second barrier behind the rules of review: whatever the service does, nobody who had a hand in a design signs
-- for it, and a signature covers the document and the assessment of the very revision it is for.
CREATE FUNCTION check_sign_off() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (SELECT 1 FROM revision WHERE id = NEW.revision_id AND NEW.signer_id = ANY (hands || author_id)) THEN
    RAISE EXCEPTION 'the signer had a hand in this design' USING ERRCODE = '23514';
  END IF;
  IF NOT EXISTS (
    SELECT 1 FROM revision r JOIN assessment a ON a.revision_id = r.id
    WHERE r.id = NEW.revision_id AND r.document_hash = NEW.document_hash
      AND a.id = NEW.assessment_id AND a.hash = NEW.assessment_hash AND a.method = NEW.method
  ) THEN
    RAISE EXCEPTION 'the signature does not cover what this revision holds' USING ERRCODE = '23514';
  END IF;
  RETURN NEW;
END
$$;

CREATE TRIGGER sign_off_binds BEFORE INSERT ON sign_off FOR EACH ROW EXECUTE FUNCTION check_sign_off();

ALTER TABLE "user" ADD CONSTRAINT user_email_is_small CHECK (email = lower(email) AND email LIKE '%_@_%');
ALTER TABLE club ADD CONSTRAINT club_code_form CHECK (code ~ '^[A-Z]{2,4}$');
ALTER TABLE design ADD CONSTRAINT design_number_form CHECK (number ~ '^[A-Z]{2,4}-[0-9]{3,6}$' AND sequence >= 1);
ALTER TABLE draft ADD CONSTRAINT draft_version_counts CHECK (version >= 1);
ALTER TABLE draft ADD CONSTRAINT draft_hash_form CHECK (document_hash ~ '^[0-9a-f]{64}$');
-- The letters of drawings: without I, O, Q, S, X and Z.
ALTER TABLE revision ADD CONSTRAINT revision_letter_form CHECK (letter ~ '^[A-HJ-NPRT-WY]+$' AND ordinal >= 1);
ALTER TABLE revision ADD CONSTRAINT revision_hash_form CHECK (document_hash ~ '^[0-9a-f]{64}$');
ALTER TABLE assessment ADD CONSTRAINT assessment_hash_form CHECK (hash ~ '^[0-9a-f]{64}$');
ALTER TABLE disposition ADD CONSTRAINT disposition_reason_said CHECK (length(btrim(reason)) >= 10);
ALTER TABLE sign_off_void ADD CONSTRAINT sign_off_void_reason_said CHECK (length(btrim(reason)) >= 10);
ALTER TABLE sign_off ADD CONSTRAINT sign_off_meaning_said CHECK (length(meaning) > 0 AND round >= 1);
ALTER TABLE ledger_event ADD CONSTRAINT ledger_event_form CHECK (
  seq >= 1 AND hash ~ '^[0-9a-f]{64}$' AND previous_hash ~ '^[0-9a-f]{64}$');
