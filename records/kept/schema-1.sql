-- A store of schema 1 as it was when it was the newest. Never changed.
pragma application_id = 1180127828;
pragma user_version = 1;
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
insert into designs values (1, 'heron', '2031-01-02T03:04:05.678Z');
insert into designs values (2, 'W3’s ring finger', '2031-01-03T03:04:05.678Z');
insert into revisions values (1, 1, '{"format":"fingerwright-design/1","title":"heron, as drawn"}', 'fingerwright 0.1.0', '{"closed.toggle.distal.deadCentreMargin":{"value":8.7,"unit":"deg"}}', '[{"requirement":"margin","figure":"closed.toggle.distal.deadCentreMargin","found":8.7,"needed":{"atLeast":7},"unit":"deg","verdict":"met","margin":1.7}]', '[]', 'K1', 'as drawn', '2031-01-02T03:04:05.678Z');
insert into revisions values (1, 2, '{"format":"fingerwright-design/1","title":"heron, link 0.5 mm longer"}', 'fingerwright 0.1.0', '{"closed.toggle.distal.deadCentreMargin":{"value":8.7,"unit":"deg"}}', '[{"requirement":"margin","figure":"closed.toggle.distal.deadCentreMargin","found":8.7,"needed":{"atLeast":7},"unit":"deg","verdict":"met","margin":1.7}]', '[]', 'K2', 'the margin was small;
seen on the bench', '2031-01-02T04:04:05.678Z');
CREATE TRIGGER revisions_never_change before update on revisions
begin select raise(abort, 'a revision never changes'); end;
CREATE TRIGGER revisions_never_go before delete on revisions
begin select raise(abort, 'a revision is never deleted'); end;
CREATE TRIGGER revisions_follow_one_another before insert on revisions
when new.number is not (select coalesce(max(number), 0) + 1 from revisions where design = new.design)
begin select raise(abort, 'a revision takes the next number'); end;
