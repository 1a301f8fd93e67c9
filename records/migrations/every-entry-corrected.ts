/**
 * Schema 6: a decision and a calibration can be corrected too, a measured test says which figure it was of and what its rig leaves open, and a
 * whole import can be withdrawn: its readings stay and count no longer. What stands after corrections is said once, in two views.
 */
import { ID, keptForever, SIGNED } from './kept-forever.ts'

/** SQLite adds no unique column to a table that is there, so that an index says it. */
const correctable = (table: string, { same, says }: { readonly same: string; readonly says: string }): string => `
alter table ${table} add column reason text;

alter table ${table} add column corrects integer references ${table} (id) check ((corrects is null) = (reason is null));

create unique index ${table}_are_corrected_once on ${table} (corrects);

create trigger ${table}_correct_their_own before insert on ${table}
when new.corrects is not null and not exists (select 1 from ${table} where id = new.corrects and ${same})
begin select raise(abort, '${says}'); end;

create trigger ${table}_corrections_are_never_replaced before insert on ${table}
when exists (select 1 from ${table} where corrects = new.corrects)
begin select raise(abort, 'an entry is never replaced'); end;
`

const measuredTests = `
alter table bench_tests add column figure text check (figure is null or (figure <> '' and outcome = 'measured'));

alter table bench_tests add column uncertainty real check (uncertainty is null or (uncertainty >= 0 and figure is not null));
`

const withdrawals = `
create table withdrawals (
  id integer primary key,
  import integer not null references imports (id),
  reason text not null check (reason <> ''),
  ${SIGNED}
) strict;
${keptForever('withdrawals', [ID])}`

/** Rows come in behind what they correct, so that the last of a chain has its greatest number. */
const whatStands = `
create view reading_corrections as
with recursive later (reading, correction) as (
  select corrects, id from readings where corrects is not null
  union all
  select later.reading, readings.id from later join readings on readings.corrects = later.correction
)
select later.reading, min(later.correction) as correction from later join readings on readings.id = later.correction
where readings.import is null or readings.import not in (select import from withdrawals)
group by later.reading;

create view calibrations as
with recursive chain (first, id) as (
  select id, id from gauges where corrects is null
  union all
  select chain.first, gauges.id from chain join gauges on gauges.corrects = chain.id
)
select id, first, max(id) over (partition by first) as stands from chain;
`

/** The statements of schema 6. */
export const everyEntryCorrected = [
  correctable('gauges', { same: 'name = new.name', says: 'a correction is of the same gauge' }),
  correctable('decisions', {
    same: 'article = new.article and characteristic is new.characteristic',
    says: 'a correction is of the same characteristic of the same article',
  }),
  measuredTests,
  withdrawals,
  whatStands,
].join('')
