-- +goose Up
-- A version is tried once it was made at the bench or an episode went out with
-- it. A deleted trial or episode still counts: its deletion can be undone.
CREATE VIEW tried_version (version_id) AS
SELECT version_id
FROM trial
UNION ALL
SELECT version_id
FROM episode
WHERE stage = 'released'
  AND version_id IS NOT NULL;

-- +goose StatementBegin
CREATE TRIGGER version_is_not_changed
BEFORE UPDATE ON version
WHEN EXISTS (SELECT 1 FROM tried_version WHERE version_id = OLD.version_id)
BEGIN
    SELECT RAISE(ABORT, 'a tried version is never changed');
END;
-- +goose StatementEnd

-- +goose StatementBegin
CREATE TRIGGER component_is_not_added
BEFORE INSERT ON component
WHEN EXISTS (SELECT 1 FROM tried_version WHERE version_id = NEW.version_id)
BEGIN
    SELECT RAISE(ABORT, 'a tried version is never changed');
END;
-- +goose StatementEnd

-- +goose StatementBegin
CREATE TRIGGER component_is_not_changed
BEFORE UPDATE ON component
WHEN EXISTS (SELECT 1 FROM tried_version WHERE version_id IN (OLD.version_id, NEW.version_id))
BEGIN
    SELECT RAISE(ABORT, 'a tried version is never changed');
END;
-- +goose StatementEnd

-- +goose StatementBegin
CREATE TRIGGER component_is_not_removed
BEFORE DELETE ON component
WHEN EXISTS (SELECT 1 FROM tried_version WHERE version_id = OLD.version_id)
BEGIN
    SELECT RAISE(ABORT, 'a tried version is never changed');
END;
-- +goose StatementEnd

-- +goose StatementBegin
CREATE TRIGGER line_is_not_added
BEFORE INSERT ON line
WHEN EXISTS (SELECT 1 FROM tried_version WHERE version_id = NEW.version_id)
BEGIN
    SELECT RAISE(ABORT, 'a tried version is never changed');
END;
-- +goose StatementEnd

-- +goose StatementBegin
CREATE TRIGGER line_is_not_changed
BEFORE UPDATE ON line
WHEN EXISTS (SELECT 1 FROM tried_version WHERE version_id IN (OLD.version_id, NEW.version_id))
BEGIN
    SELECT RAISE(ABORT, 'a tried version is never changed');
END;
-- +goose StatementEnd

-- +goose StatementBegin
CREATE TRIGGER line_is_not_removed
BEFORE DELETE ON line
WHEN EXISTS (SELECT 1 FROM tried_version WHERE version_id = OLD.version_id)
BEGIN
    SELECT RAISE(ABORT, 'a tried version is never changed');
END;
-- +goose StatementEnd

-- +goose StatementBegin
CREATE TRIGGER step_is_not_added
BEFORE INSERT ON step
WHEN EXISTS (SELECT 1 FROM tried_version WHERE version_id = NEW.version_id)
BEGIN
    SELECT RAISE(ABORT, 'a tried version is never changed');
END;
-- +goose StatementEnd

-- +goose StatementBegin
CREATE TRIGGER step_is_not_changed
BEFORE UPDATE ON step
WHEN EXISTS (SELECT 1 FROM tried_version WHERE version_id IN (OLD.version_id, NEW.version_id))
BEGIN
    SELECT RAISE(ABORT, 'a tried version is never changed');
END;
-- +goose StatementEnd

-- +goose StatementBegin
CREATE TRIGGER step_is_not_removed
BEFORE DELETE ON step
WHEN EXISTS (SELECT 1 FROM tried_version WHERE version_id = OLD.version_id)
BEGIN
    SELECT RAISE(ABORT, 'a tried version is never changed');
END;
-- +goose StatementEnd

-- +goose StatementBegin
CREATE TRIGGER unread_line_is_not_added
BEFORE INSERT ON unread_line
WHEN EXISTS (SELECT 1 FROM tried_version WHERE version_id = NEW.version_id)
BEGIN
    SELECT RAISE(ABORT, 'a tried version is never changed');
END;
-- +goose StatementEnd

-- +goose StatementBegin
CREATE TRIGGER unread_line_is_not_changed
BEFORE UPDATE ON unread_line
WHEN EXISTS (SELECT 1 FROM tried_version WHERE version_id IN (OLD.version_id, NEW.version_id))
BEGIN
    SELECT RAISE(ABORT, 'a tried version is never changed');
END;
-- +goose StatementEnd

-- +goose StatementBegin
CREATE TRIGGER unread_line_is_not_removed
BEFORE DELETE ON unread_line
WHEN EXISTS (SELECT 1 FROM tried_version WHERE version_id = OLD.version_id)
BEGIN
    SELECT RAISE(ABORT, 'a tried version is never changed');
END;
-- +goose StatementEnd

-- +goose Down
DROP TRIGGER unread_line_is_not_removed;
DROP TRIGGER unread_line_is_not_changed;
DROP TRIGGER unread_line_is_not_added;
DROP TRIGGER step_is_not_removed;
DROP TRIGGER step_is_not_changed;
DROP TRIGGER step_is_not_added;
DROP TRIGGER line_is_not_removed;
DROP TRIGGER line_is_not_changed;
DROP TRIGGER line_is_not_added;
DROP TRIGGER component_is_not_removed;
DROP TRIGGER component_is_not_changed;
DROP TRIGGER component_is_not_added;
DROP TRIGGER version_is_not_changed;
DROP VIEW tried_version;
