/**
 * Schema 3: the bench book: plans that are frozen with a revision, lots, articles with serial numbers, gauges, imports, readings, coater's
 * certificates, bench tests, decisions and sign-offs. Whatever program asks, an entry is never changed, deleted or replaced; a correction
 * is an entry of its own that points to what it corrects.
 */
import { corrects, ID, keptForever, SIGNED } from './kept-forever.ts'

const tables = `
create table plans (
  design integer not null,
  revision integer not null,
  characteristics text not null check (json_valid(characteristics)),
  engine text not null,
  made text not null,
  primary key (design, revision),
  foreign key (design, revision) references revisions (design, number)
) strict;

create table gauges (
  id integer primary key,
  name text not null check (name <> ''),
  resolution_mm real not null check (resolution_mm > 0),
  uncertainty_mm real not null check (uncertainty_mm >= 0),
  calibrated text not null,
  ${SIGNED}
) strict;

create table lots (
  id integer primary key,
  design integer not null,
  revision integer not null,
  name text not null check (name <> ''),
  note text,
  ${SIGNED},
  unique (design, name),
  unique (id, design),
  foreign key (design, revision) references plans (design, revision)
) strict;

create table articles (
  id integer primary key,
  design integer not null,
  lot integer not null,
  serial text not null check (serial <> ''),
  piece text check (piece <> ''),
  ${SIGNED},
  unique (design, serial),
  foreign key (lot, design) references lots (id, design)
) strict;

create table imports (
  id integer primary key,
  lot integer not null references lots (id),
  file text not null,
  digest text not null,
  ${SIGNED},
  unique (lot, digest)
) strict;

create table readings (
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
  ${SIGNED},
  ${corrects('readings')},
  check ((least is null) = (most is null) and (at_x_mm is null) = (at_y_mm is null) and most >= least),
  check ((least is null) <> (at_x_mm is null) or (least is null and at_x_mm is null and corrects is not null))
) strict;

create index readings_of_an_article on readings (article);

create table certificates (
  id integer primary key,
  lot integer not null references lots (id),
  coating text not null check (coating <> ''),
  coupons_mm text not null check (json_valid(coupons_mm)),
  cure_degC real,
  cure_min real check (cure_min > 0),
  issued text not null,
  note text,
  ${SIGNED},
  ${corrects('certificates')}
) strict;

create table bench_tests (
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
  ${SIGNED},
  ${corrects('bench_tests')},
  check ((photo_bytes is null) = (photo_type is null))
) strict;

create table decisions (
  id integer primary key,
  article integer not null references articles (id),
  characteristic text,
  decision text not null check (decision in ('use as is', 'rework', 'scrap')),
  why text not null check (why <> ''),
  consequence text not null check (consequence <> ''),
  ${SIGNED}
) strict;

create table sign_offs (
  id integer primary key,
  lot integer not null references lots (id),
  article integer references articles (id),
  statement text not null check (statement <> ''),
  ${SIGNED}
) strict;
`

/** Keys by which SQLite would take an entry for another one and put it in its place. */
const KEYS: Readonly<Record<string, readonly string[]>> = {
  plans: ['design = new.design and revision = new.revision'],
  gauges: [ID],
  lots: [ID, 'design = new.design and name = new.name'],
  articles: [ID, 'design = new.design and serial = new.serial'],
  imports: [ID, 'lot = new.lot and digest = new.digest'],
  readings: [ID, 'corrects = new.corrects'],
  certificates: [ID, 'corrects = new.corrects'],
  bench_tests: [ID, 'corrects = new.corrects'],
  decisions: [ID],
  sign_offs: [ID],
}

const belongTogether = `
create trigger readings_are_of_the_plan before insert on readings
when not exists (
  select 1 from articles join lots on lots.id = articles.lot
    join plans on plans.design = lots.design and plans.revision = lots.revision
    join json_each(plans.characteristics) as one
  where articles.id = new.article and one.value ->> 'id' = new.characteristic
)
begin select raise(abort, 'a reading is of a characteristic of the plan'); end;

create trigger readings_correct_their_own before insert on readings
when new.corrects is not null and not exists (
  select 1 from readings
  where id = new.corrects and article = new.article and characteristic = new.characteristic
)
begin select raise(abort, 'a correction is of the same characteristic of the same article'); end;

create trigger certificates_correct_their_own before insert on certificates
when new.corrects is not null and not exists (select 1 from certificates where id = new.corrects and lot = new.lot)
begin select raise(abort, 'a correction is of the same lot'); end;

create trigger bench_tests_correct_their_own before insert on bench_tests
when new.corrects is not null and not exists (select 1 from bench_tests where id = new.corrects and article = new.article)
begin select raise(abort, 'a correction is of the same article'); end;

create trigger sign_offs_are_of_the_lot before insert on sign_offs
when new.article is not null and not exists (select 1 from articles where id = new.article and lot = new.lot)
begin select raise(abort, 'what is signed off belongs to the lot'); end;
`

/** The statements of schema 3. */
export const benchBook = `${tables}${Object.entries(KEYS)
  .map(([table, keys]) => keptForever(table, keys))
  .join('')}${belongTogether}`
