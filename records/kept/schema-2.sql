-- A store of schema 2 as it was when it was the newest. Never changed.
pragma application_id = 1180127828;
pragma user_version = 2;
CREATE TABLE designs (
  id integer primary key,
  name text not null unique check (length(name) between 1 and 255),
  made text not null
) strict;
CREATE TABLE revisions (
  design integer not null references designs (id),
  number integer not null check (number >= 1),
  text text not null,
  engine text not null,
  figures text not null check (json_valid(figures)),
  findings text not null check (json_valid(findings)),
  problems text not null check (json_valid(problems)),
  who text not null check (who <> ''),
  why text not null check (why <> ''),
  saved text not null,
  primary key (design, number)
) strict;
CREATE TABLE drafts (
  design integer primary key references designs (id),
  version integer not null check (version >= 1),
  base text not null,
  text text not null,
  position integer not null check (position >= 0),
  given text,
  saved text not null
) strict;
CREATE TABLE draft_steps (
  design integer not null references drafts (design),
  number integer not null check (number >= 0),
  splice text not null check (json_valid(splice)),
  said text not null,
  primary key (design, number)
) strict;
insert into designs values (1, 'heron', '2031-01-02T03:04:05.678Z');
insert into designs values (2, 'W3’s ring finger', '2031-01-03T03:04:05.678Z');
insert into revisions values (1, 1, '{"format":"fingerwright-design/1","title":"heron, as drawn"}', 'fingerwright 0.1.0', '{"closed.toggle.distal.deadCentreMargin":{"value":8.7,"unit":"deg"}}', '[{"requirement":"margin","figure":"closed.toggle.distal.deadCentreMargin","found":8.7,"needed":{"atLeast":7},"unit":"deg","verdict":"met","margin":1.7}]', '[]', 'K1', 'as drawn', '2031-01-02T03:04:05.678Z');
insert into revisions values (1, 2, '{"format":"fingerwright-design/1","title":"heron, link 0.5 mm longer"}', 'fingerwright 0.1.0', '{"closed.toggle.distal.deadCentreMargin":{"value":8.7,"unit":"deg"}}', '[{"requirement":"margin","figure":"closed.toggle.distal.deadCentreMargin","found":8.7,"needed":{"atLeast":7},"unit":"deg","verdict":"met","margin":1.7}]', '[]', 'K2', 'the margin was small;
seen on the bench', '2031-01-02T04:04:05.678Z');
insert into drafts values (2, 3, 'ab', 'cd', 1, null, '2031-01-03T03:05:05.678Z');
insert into draft_steps values (2, 0, '{"at":0,"removed":"ab","inserted":"cd"}', 'moved pin B by 0.5 mm');
insert into draft_steps values (2, 1, '{"at":1,"removed":"d","inserted":"e"}', 'trial: dry pins');
CREATE TRIGGER revisions_never_change before update on revisions
begin select raise(abort, 'a revision never changes'); end;
CREATE TRIGGER revisions_never_go before delete on revisions
begin select raise(abort, 'a revision is never deleted'); end;
CREATE TRIGGER revisions_follow_one_another before insert on revisions
when new.number is not (select coalesce(max(number), 0) + 1 from revisions where design = new.design)
begin select raise(abort, 'a revision takes the next number'); end;
CREATE TRIGGER draft_versions_grow before update on drafts
when new.version <= old.version
begin select raise(abort, 'the version of a draft grows'); end;
