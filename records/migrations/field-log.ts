/**
 * Schema 4: the field log: returns and complaints by serial number, with the risks that they belong to. Who they come from is not in the store:
 * `contact` is a key in a list that is kept elsewhere, and `contacts_in` says where that is.
 */
import { corrects, ID, keptForever, SIGNED } from './kept-forever.ts'

const table = `
create table field_log (
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
  ${SIGNED},
  ${corrects('field_log')}
) strict;

create index field_log_of_an_article on field_log (article);
`

const belongTogether = `
create trigger field_log_corrects_its_own before insert on field_log
when new.corrects is not null and not exists (select 1 from field_log where id = new.corrects and article = new.article)
begin select raise(abort, 'a correction is of the same article'); end;
`

/** The statements of schema 4. */
export const fieldLog = `${table}${keptForever('field_log', [ID, 'corrects = new.corrects'])}${belongTogether}`
