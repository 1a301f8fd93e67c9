-- A store of schema 6 as it was when it was the newest. Never changed.
pragma application_id = 1180127828;
pragma user_version = 6;
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
CREATE TABLE plans (
  design integer not null,
  revision integer not null,
  characteristics text not null check (json_valid(characteristics)),
  engine text not null,
  made text not null,
  primary key (design, revision),
  foreign key (design, revision) references revisions (design, number)
) strict;
CREATE TABLE gauges (
  id integer primary key,
  name text not null check (name <> ''),
  resolution_mm real not null check (resolution_mm > 0),
  uncertainty_mm real not null check (uncertainty_mm >= 0),
  calibrated text not null,
  who text not null check (who <> ''),
  made text not null
, reason text, corrects integer references gauges (id) check ((corrects is null) = (reason is null))) strict;
CREATE TABLE lots (
  id integer primary key,
  design integer not null,
  revision integer not null,
  name text not null check (name <> ''),
  note text,
  who text not null check (who <> ''),
  made text not null,
  unique (design, name),
  unique (id, design),
  foreign key (design, revision) references plans (design, revision)
) strict;
CREATE TABLE articles (
  id integer primary key,
  design integer not null,
  lot integer not null,
  serial text not null check (serial <> ''),
  piece text check (piece <> ''),
  who text not null check (who <> ''),
  made text not null,
  unique (design, serial),
  foreign key (lot, design) references lots (id, design)
) strict;
CREATE TABLE imports (
  id integer primary key,
  lot integer not null references lots (id),
  file text not null,
  digest text not null,
  who text not null check (who <> ''),
  made text not null,
  unique (lot, digest)
) strict;
CREATE TABLE readings (
  id integer primary key,
  article integer not null references articles (id),
  characteristic text not null,
  visit text not null check (visit in ('before coating', 'finished')),
  found text,
  x text,
  y text,
  uncertainty text,
  least real,
  most real,
  at_x_mm real,
  at_y_mm real,
  uncertainty_mm real check (uncertainty_mm >= 0),
  gauge integer references gauges (id),
  import integer references imports (id),
  who text not null check (who <> ''),
  made text not null,
  corrects integer unique references readings (id),
  reason text, measured_by text check (measured_by <> ''), measured_on text check (measured_on like '____-__-__'),
  check ((corrects is null) = (reason is null)),
  check ((least is null) = (most is null) and (at_x_mm is null) = (at_y_mm is null) and most >= least),
  check ((least is null) <> (at_x_mm is null) or (least is null and at_x_mm is null and corrects is not null))
) strict;
CREATE TABLE certificates (
  id integer primary key,
  lot integer not null references lots (id),
  coating text not null check (coating <> ''),
  coupons_mm text not null check (json_valid(coupons_mm)),
  cure_degC real,
  cure_min real check (cure_min > 0),
  issued text not null,
  note text,
  who text not null check (who <> ''),
  made text not null,
  corrects integer unique references certificates (id),
  reason text,
  check ((corrects is null) = (reason is null))
) strict;
CREATE TABLE bench_tests (
  id integer primary key,
  article integer not null references articles (id),
  test text not null check (test in ('load to hold', 'return after load', 'cycles', 'pinch force')),
  value real not null,
  unit text not null check (unit in ('N', 'cycles')),
  outcome text not null check (outcome in ('did', 'did not', 'measured')),
  tested text not null,
  rig text not null check (rig <> ''),
  note text,
  photo text,
  photo_type text,
  photo_bytes blob check (length(photo_bytes) <= 2000000),
  who text not null check (who <> ''),
  made text not null,
  corrects integer unique references bench_tests (id),
  reason text, figure text check (figure is null or (figure <> '' and outcome = 'measured')), uncertainty real check (uncertainty is null or (uncertainty >= 0 and figure is not null)),
  check ((corrects is null) = (reason is null)),
  check ((photo_bytes is null) = (photo_type is null))
) strict;
CREATE TABLE decisions (
  id integer primary key,
  article integer not null references articles (id),
  characteristic text,
  decision text not null check (decision in ('use as is', 'rework', 'scrap')),
  why text not null check (why <> ''),
  consequence text not null check (consequence <> ''),
  who text not null check (who <> ''),
  made text not null
, reason text, corrects integer references decisions (id) check ((corrects is null) = (reason is null))) strict;
CREATE TABLE sign_offs (
  id integer primary key,
  lot integer not null references lots (id),
  article integer references articles (id),
  statement text not null check (statement <> ''),
  who text not null check (who <> ''),
  made text not null
) strict;
CREATE TABLE field_log (
  id integer primary key,
  article integer not null references articles (id),
  sort text not null check (sort in ('return', 'complaint')),
  came text not null,
  told text not null check (told <> ''),
  found text check (found <> ''),
  harm text not null check (harm in ('nobody hurt', 'somebody hurt', 'not known')),
  risks text not null check (json_valid(risks)),
  contact text not null check (contact <> '' and contact not glob '*[^A-Z0-9-]*'),
  contacts_in text not null check (contacts_in <> ''),
  who text not null check (who <> ''),
  made text not null,
  corrects integer unique references field_log (id),
  reason text,
  check ((corrects is null) = (reason is null))
) strict;
CREATE TABLE withdrawals (
  id integer primary key,
  import integer not null references imports (id),
  reason text not null check (reason <> ''),
  who text not null check (who <> ''),
  made text not null
) strict;
CREATE INDEX readings_of_an_article on readings (article);
CREATE INDEX field_log_of_an_article on field_log (article);
CREATE UNIQUE INDEX gauges_are_corrected_once on gauges (corrects);
CREATE UNIQUE INDEX decisions_are_corrected_once on decisions (corrects);
insert into designs values (1, 'heron', '2031-01-02T03:04:05.678Z');
insert into designs values (2, 'W3’s ring finger', '2031-01-03T03:04:05.678Z');
insert into revisions values (1, 1, '{"format":"fingerwright-design/1","title":"heron, as drawn"}', 'fingerwright 0.1.0', '{"closed.toggle.distal.deadCentreMargin":{"value":8.7,"unit":"deg"}}', '[{"requirement":"margin","figure":"closed.toggle.distal.deadCentreMargin","found":8.7,"needed":{"atLeast":7},"unit":"deg","verdict":"met","margin":1.7}]', '[]', 'K1', 'as drawn', '2031-01-02T03:04:05.678Z');
insert into revisions values (1, 2, '{"format":"fingerwright-design/1","title":"heron, link 0.5 mm longer"}', 'fingerwright 0.1.0', '{"closed.toggle.distal.deadCentreMargin":{"value":8.7,"unit":"deg"}}', '[{"requirement":"margin","figure":"closed.toggle.distal.deadCentreMargin","found":8.7,"needed":{"atLeast":7},"unit":"deg","verdict":"met","margin":1.7}]', '[]', 'K2', 'the margin was small;
seen on the bench', '2031-01-02T04:04:05.678Z');
insert into drafts values (2, 3, 'ab', 'cd', 1, null, '2031-01-03T03:05:05.678Z');
insert into draft_steps values (2, 0, '{"at":0,"removed":"ab","inserted":"cd"}', 'moved pin B by 0.5 mm');
insert into draft_steps values (2, 1, '{"at":1,"removed":"d","inserted":"e"}', 'trial: dry pins');
insert into plans values (1, 2, '[{"number":1,"id":"dimensions.pinDiameter","words":"pin diameter","kind":"size","unit":"mm","nominal":3,"least":2.99,"most":3,"sources":[0]}]', 'fingerwright 0.1.0', '2031-01-04T03:04:05.678Z');
insert into gauges values (1, 'micrometer 2', 0.001, 0.002, '2030-11-02', 'K1', '2031-01-04T03:04:05.678Z', null, null);
insert into gauges values (2, 'micrometer 2', 0.001, 0.003, '2030-11-02', 'K1', '2031-03-02T03:04:05.678Z', 'its certificate says 3 µm', 1);
insert into lots values (1, 1, 2, 'L7', 'from the second order', 'K1', '2031-01-04T03:04:05.678Z');
insert into articles values (1, 1, 1, 'A-001', null, 'K1', '2031-01-04T03:04:05.678Z');
insert into imports values (1, 1, 'box.csv', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855', 'K1', '2031-01-04T03:04:05.678Z');
insert into imports values (2, 1, 'box 2.csv', '3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855e', 'K1', '2031-03-02T03:05:05.678Z');
insert into readings values (1, 1, 'dimensions.pinDiameter', 'finished', '2.697', null, null, null, 2.695, 2.699, null, null, null, 1, 1, 'K1', '2031-01-04T03:05:05.678Z', null, null, null, null);
insert into readings values (2, 1, 'dimensions.pinDiameter', 'finished', '2.997', null, null, null, 2.995, 2.999, null, null, null, 1, null, 'K2', '2031-01-04T03:06:05.678Z', 1, 'misread', 'K3', '2031-01-03');
insert into readings values (3, 1, 'dimensions.pinDiameter', 'finished', '29.97', null, null, null, 29.97, 29.97, null, null, null, null, 2, 'K1', '2031-03-02T03:05:05.678Z', null, null, null, null);
insert into certificates values (1, 1, 'film on the pins', '[0.012,0.0125]', 180, 60, '2031-01-03', null, 'K1', '2031-01-04T03:04:05.678Z', null, null);
insert into bench_tests values (1, 1, 'load to hold', 60, 'N', 'did', '2031-01-04', 'rig 1', null, 'sheet 4', 'image/png', x'89504e470d0a1a0a', 'K1', '2031-01-04T03:07:05.678Z', null, null, null, null);
insert into bench_tests values (2, 1, 'load to hold', 62, 'N', 'measured', '2031-03-02', 'rig 1', null, null, null, null, 'K1', '2031-03-02T03:07:05.678Z', 1, 'the load was measured', 'loadCase.carry.sustainingLoad', 0.5);
insert into decisions values (1, 1, 'dimensions.pinDiameter', 'use as is', 'within by a hair', 'holds and lets go as measured', 'K1', '2031-01-04T03:08:05.678Z', null, null);
insert into decisions values (2, 1, 'dimensions.pinDiameter', 'scrap', 'it is bent as well', 'holds and lets go as measured', 'K2', '2031-03-02T03:08:05.678Z', 'seen on the plate', 1);
insert into sign_offs values (1, 1, 1, 'first article as found', 'K2', '2031-01-04T03:09:05.678Z');
insert into field_log values (1, 1, 'complaint', '2031-03-01', 'did not open once, in the cold', 'grease had gone stiff', 'nobody hurt', '["doesNotLetGo"]', 'C-014', 'the green book in the office safe', 'K1', '2031-03-01T03:04:05.678Z', null, null);
insert into withdrawals values (1, 2, 'the columns were taken wrongly', 'K2', '2031-03-02T03:06:05.678Z');
CREATE VIEW reading_corrections as
with recursive later (reading, correction) as (
  select corrects, id from readings where corrects is not null
  union all
  select later.reading, readings.id from later join readings on readings.corrects = later.correction
)
select later.reading, min(later.correction) as correction from later join readings on readings.id = later.correction
where readings.import is null or readings.import not in (select import from withdrawals)
group by later.reading;
CREATE VIEW calibrations as
with recursive chain (first, id) as (
  select id, id from gauges where corrects is null
  union all
  select chain.first, gauges.id from chain join gauges on gauges.corrects = chain.id
)
select id, first, max(id) over (partition by first) as stands from chain;
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
CREATE TRIGGER plans_never_change before update on plans
begin select raise(abort, 'an entry never changes'); end;
CREATE TRIGGER plans_never_go before delete on plans
begin select raise(abort, 'an entry is never deleted'); end;
CREATE TRIGGER plans_are_never_replaced before insert on plans
when exists (select 1 from plans where (design = new.design and revision = new.revision))
begin select raise(abort, 'an entry is never replaced'); end;
CREATE TRIGGER gauges_never_change before update on gauges
begin select raise(abort, 'an entry never changes'); end;
CREATE TRIGGER gauges_never_go before delete on gauges
begin select raise(abort, 'an entry is never deleted'); end;
CREATE TRIGGER gauges_are_never_replaced before insert on gauges
when exists (select 1 from gauges where (id = new.id))
begin select raise(abort, 'an entry is never replaced'); end;
CREATE TRIGGER lots_never_change before update on lots
begin select raise(abort, 'an entry never changes'); end;
CREATE TRIGGER lots_never_go before delete on lots
begin select raise(abort, 'an entry is never deleted'); end;
CREATE TRIGGER lots_are_never_replaced before insert on lots
when exists (select 1 from lots where (id = new.id) or (design = new.design and name = new.name))
begin select raise(abort, 'an entry is never replaced'); end;
CREATE TRIGGER articles_never_change before update on articles
begin select raise(abort, 'an entry never changes'); end;
CREATE TRIGGER articles_never_go before delete on articles
begin select raise(abort, 'an entry is never deleted'); end;
CREATE TRIGGER articles_are_never_replaced before insert on articles
when exists (select 1 from articles where (id = new.id) or (design = new.design and serial = new.serial))
begin select raise(abort, 'an entry is never replaced'); end;
CREATE TRIGGER imports_never_change before update on imports
begin select raise(abort, 'an entry never changes'); end;
CREATE TRIGGER imports_never_go before delete on imports
begin select raise(abort, 'an entry is never deleted'); end;
CREATE TRIGGER imports_are_never_replaced before insert on imports
when exists (select 1 from imports where (id = new.id) or (lot = new.lot and digest = new.digest))
begin select raise(abort, 'an entry is never replaced'); end;
CREATE TRIGGER readings_never_change before update on readings
begin select raise(abort, 'an entry never changes'); end;
CREATE TRIGGER readings_never_go before delete on readings
begin select raise(abort, 'an entry is never deleted'); end;
CREATE TRIGGER readings_are_never_replaced before insert on readings
when exists (select 1 from readings where (id = new.id) or (corrects = new.corrects))
begin select raise(abort, 'an entry is never replaced'); end;
CREATE TRIGGER certificates_never_change before update on certificates
begin select raise(abort, 'an entry never changes'); end;
CREATE TRIGGER certificates_never_go before delete on certificates
begin select raise(abort, 'an entry is never deleted'); end;
CREATE TRIGGER certificates_are_never_replaced before insert on certificates
when exists (select 1 from certificates where (id = new.id) or (corrects = new.corrects))
begin select raise(abort, 'an entry is never replaced'); end;
CREATE TRIGGER bench_tests_never_change before update on bench_tests
begin select raise(abort, 'an entry never changes'); end;
CREATE TRIGGER bench_tests_never_go before delete on bench_tests
begin select raise(abort, 'an entry is never deleted'); end;
CREATE TRIGGER bench_tests_are_never_replaced before insert on bench_tests
when exists (select 1 from bench_tests where (id = new.id) or (corrects = new.corrects))
begin select raise(abort, 'an entry is never replaced'); end;
CREATE TRIGGER decisions_never_change before update on decisions
begin select raise(abort, 'an entry never changes'); end;
CREATE TRIGGER decisions_never_go before delete on decisions
begin select raise(abort, 'an entry is never deleted'); end;
CREATE TRIGGER decisions_are_never_replaced before insert on decisions
when exists (select 1 from decisions where (id = new.id))
begin select raise(abort, 'an entry is never replaced'); end;
CREATE TRIGGER sign_offs_never_change before update on sign_offs
begin select raise(abort, 'an entry never changes'); end;
CREATE TRIGGER sign_offs_never_go before delete on sign_offs
begin select raise(abort, 'an entry is never deleted'); end;
CREATE TRIGGER sign_offs_are_never_replaced before insert on sign_offs
when exists (select 1 from sign_offs where (id = new.id))
begin select raise(abort, 'an entry is never replaced'); end;
CREATE TRIGGER readings_are_of_the_plan before insert on readings
when not exists (
  select 1 from articles join lots on lots.id = articles.lot
    join plans on plans.design = lots.design and plans.revision = lots.revision
    join json_each(plans.characteristics) as one
  where articles.id = new.article and one.value ->> 'id' = new.characteristic
)
begin select raise(abort, 'a reading is of a characteristic of the plan'); end;
CREATE TRIGGER readings_correct_their_own before insert on readings
when new.corrects is not null and not exists (
  select 1 from readings
  where id = new.corrects and article = new.article and characteristic = new.characteristic
)
begin select raise(abort, 'a correction is of the same characteristic of the same article'); end;
CREATE TRIGGER certificates_correct_their_own before insert on certificates
when new.corrects is not null and not exists (select 1 from certificates where id = new.corrects and lot = new.lot)
begin select raise(abort, 'a correction is of the same lot'); end;
CREATE TRIGGER bench_tests_correct_their_own before insert on bench_tests
when new.corrects is not null and not exists (select 1 from bench_tests where id = new.corrects and article = new.article)
begin select raise(abort, 'a correction is of the same article'); end;
CREATE TRIGGER sign_offs_are_of_the_lot before insert on sign_offs
when new.article is not null and not exists (select 1 from articles where id = new.article and lot = new.lot)
begin select raise(abort, 'what is signed off belongs to the lot'); end;
CREATE TRIGGER field_log_never_change before update on field_log
begin select raise(abort, 'an entry never changes'); end;
CREATE TRIGGER field_log_never_go before delete on field_log
begin select raise(abort, 'an entry is never deleted'); end;
CREATE TRIGGER field_log_are_never_replaced before insert on field_log
when exists (select 1 from field_log where (id = new.id) or (corrects = new.corrects))
begin select raise(abort, 'an entry is never replaced'); end;
CREATE TRIGGER field_log_corrects_its_own before insert on field_log
when new.corrects is not null and not exists (select 1 from field_log where id = new.corrects and article = new.article)
begin select raise(abort, 'a correction is of the same article'); end;
CREATE TRIGGER gauges_correct_their_own before insert on gauges
when new.corrects is not null and not exists (select 1 from gauges where id = new.corrects and name = new.name)
begin select raise(abort, 'a correction is of the same gauge'); end;
CREATE TRIGGER gauges_corrections_are_never_replaced before insert on gauges
when exists (select 1 from gauges where corrects = new.corrects)
begin select raise(abort, 'an entry is never replaced'); end;
CREATE TRIGGER decisions_correct_their_own before insert on decisions
when new.corrects is not null and not exists (select 1 from decisions where id = new.corrects and article = new.article and characteristic is new.characteristic)
begin select raise(abort, 'a correction is of the same characteristic of the same article'); end;
CREATE TRIGGER decisions_corrections_are_never_replaced before insert on decisions
when exists (select 1 from decisions where corrects = new.corrects)
begin select raise(abort, 'an entry is never replaced'); end;
CREATE TRIGGER withdrawals_never_change before update on withdrawals
begin select raise(abort, 'an entry never changes'); end;
CREATE TRIGGER withdrawals_never_go before delete on withdrawals
begin select raise(abort, 'an entry is never deleted'); end;
CREATE TRIGGER withdrawals_are_never_replaced before insert on withdrawals
when exists (select 1 from withdrawals where (id = new.id))
begin select raise(abort, 'an entry is never replaced'); end;
