-- The logbooks of cars, tools and the shop. Only ever added to: the triggers refuse everything else. Instants are
-- microseconds since 1970-01-01 UTC; ids are upper-case text, as the ordinary tables keep them.

CREATE TABLE entries (
    id             INTEGER PRIMARY KEY CHECK (id > 0),
    owner_kind     TEXT    NOT NULL CHECK (owner_kind IN ('car', 'tool', 'shop')),
    owner          TEXT    NOT NULL,
    number         INTEGER NOT NULL CHECK (number >= 1),
    hash           BLOB    NOT NULL CHECK (length(hash) = 32),
    envelope       BLOB    NOT NULL,
    -- From here on copies of what the envelope says, to find entries by.
    at             INTEGER NOT NULL,
    person         TEXT    NOT NULL,
    session_person TEXT,
    device         TEXT    NOT NULL,
    command        TEXT    NOT NULL,
    kind           TEXT    NOT NULL,
    version        INTEGER NOT NULL,
    job            TEXT,
    joint          TEXT,
    place          TEXT,
    position       INTEGER,
    tool           TEXT,
    UNIQUE (owner_kind, owner, number)
) STRICT;

CREATE INDEX entries_of_job ON entries (job) WHERE job IS NOT NULL;
CREATE INDEX entries_of_tool ON entries (tool) WHERE tool IS NOT NULL;

-- The last entry of each logbook.
CREATE TABLE heads (
    owner_kind TEXT    NOT NULL,
    owner      TEXT    NOT NULL,
    number     INTEGER NOT NULL,
    hash       BLOB    NOT NULL CHECK (length(hash) = 32),
    PRIMARY KEY (owner_kind, owner),
    FOREIGN KEY (owner_kind, owner, number) REFERENCES entries (owner_kind, owner, number) ON UPDATE RESTRICT ON DELETE RESTRICT
) STRICT, WITHOUT ROWID;

-- Names, free text and pictures, kept outside the envelopes so that they can be erased. The salt goes with the bytes:
-- a salt left behind would let somebody try names against the digest.
CREATE TABLE content (
    digest    BLOB PRIMARY KEY NOT NULL CHECK (length(digest) = 32),
    salt      BLOB,
    bytes     BLOB,
    erased_at INTEGER,
    CHECK ((salt IS NULL) = (erased_at IS NOT NULL) AND (bytes IS NULL) = (erased_at IS NOT NULL))
) STRICT;

-- What an accepted command was answered, for the client that sends it again.
CREATE TABLE command_outcomes (
    command        TEXT    PRIMARY KEY NOT NULL,
    request_digest BLOB    NOT NULL,
    answer         BLOB    NOT NULL,
    at             INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TRIGGER entries_are_not_changed BEFORE UPDATE ON entries
BEGIN
    SELECT RAISE(ABORT, 'A logbook entry is never changed.');
END;

CREATE TRIGGER entries_are_not_deleted BEFORE DELETE ON entries
BEGIN
    SELECT RAISE(ABORT, 'A logbook entry is never deleted.');
END;

-- INSERT OR REPLACE deletes without firing the delete trigger, so it is stopped before it starts.
CREATE TRIGGER entries_are_not_replaced BEFORE INSERT ON entries
WHEN EXISTS (SELECT 1 FROM entries WHERE id = NEW.id)
    OR EXISTS (SELECT 1 FROM entries WHERE owner_kind = NEW.owner_kind AND owner = NEW.owner AND number = NEW.number)
BEGIN
    SELECT RAISE(ABORT, 'A logbook entry is never replaced.');
END;

CREATE TRIGGER entries_follow_the_head BEFORE INSERT ON entries
WHEN NEW.number IS NOT 1 + coalesce((SELECT number FROM heads WHERE owner_kind = NEW.owner_kind AND owner = NEW.owner), 0)
BEGIN
    SELECT RAISE(ABORT, 'A logbook entry has the number after the last one.');
END;

CREATE TRIGGER entries_start_a_head AFTER INSERT ON entries
WHEN NEW.number = 1
BEGIN
    INSERT INTO heads (owner_kind, owner, number, hash) VALUES (NEW.owner_kind, NEW.owner, NEW.number, NEW.hash);
END;

CREATE TRIGGER entries_move_the_head AFTER INSERT ON entries
WHEN NEW.number > 1
BEGIN
    UPDATE heads SET number = NEW.number, hash = NEW.hash WHERE owner_kind = NEW.owner_kind AND owner = NEW.owner;
END;

CREATE TRIGGER heads_start_with_an_entry BEFORE INSERT ON heads
WHEN NEW.number IS NOT 1
    OR EXISTS (SELECT 1 FROM heads WHERE owner_kind = NEW.owner_kind AND owner = NEW.owner)
    OR NOT EXISTS (SELECT 1 FROM entries WHERE owner_kind = NEW.owner_kind AND owner = NEW.owner AND number = 1 AND hash = NEW.hash)
BEGIN
    SELECT RAISE(ABORT, 'A head starts with the first entry of its logbook.');
END;

CREATE TRIGGER heads_move_by_one_entry BEFORE UPDATE ON heads
WHEN NEW.owner_kind IS NOT OLD.owner_kind
    OR NEW.owner IS NOT OLD.owner
    OR NEW.number IS NOT OLD.number + 1
    OR NOT EXISTS (SELECT 1 FROM entries WHERE owner_kind = NEW.owner_kind AND owner = NEW.owner AND number = NEW.number AND hash = NEW.hash)
BEGIN
    SELECT RAISE(ABORT, 'A head only moves forward to the next entry.');
END;

CREATE TRIGGER heads_are_not_deleted BEFORE DELETE ON heads
BEGIN
    SELECT RAISE(ABORT, 'A head is never deleted.');
END;

CREATE TRIGGER content_is_only_erased BEFORE UPDATE ON content
WHEN NEW.digest IS NOT OLD.digest
    OR NEW.rowid IS NOT OLD.rowid
    OR OLD.erased_at IS NOT NULL
    OR NEW.erased_at IS NULL
BEGIN
    SELECT RAISE(ABORT, 'Content is only erased, once, and never changed.');
END;

CREATE TRIGGER content_is_not_deleted BEFORE DELETE ON content
BEGIN
    SELECT RAISE(ABORT, 'Content is erased in place: its row is never deleted.');
END;

CREATE TRIGGER content_is_not_replaced BEFORE INSERT ON content
WHEN EXISTS (SELECT 1 FROM content WHERE digest = NEW.digest OR rowid = NEW.rowid)
BEGIN
    SELECT RAISE(ABORT, 'Content is never replaced.');
END;

CREATE TRIGGER outcomes_are_not_changed BEFORE UPDATE ON command_outcomes
BEGIN
    SELECT RAISE(ABORT, 'The answer to a command is never changed.');
END;

CREATE TRIGGER outcomes_are_not_deleted BEFORE DELETE ON command_outcomes
BEGIN
    SELECT RAISE(ABORT, 'The answer to a command is never deleted.');
END;

CREATE TRIGGER outcomes_are_not_replaced BEFORE INSERT ON command_outcomes
WHEN EXISTS (SELECT 1 FROM command_outcomes WHERE command = NEW.command)
BEGIN
    SELECT RAISE(ABORT, 'The answer to a command is never replaced.');
END;
