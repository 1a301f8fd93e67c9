/** Schema 1: designs and their revisions. A revision is never changed, deleted or replaced, by whatever program. */
export const designsAndRevisions = `
create table designs (
  id integer primary key,
  name text not null unique check (length(name) between 1 and 255),
  made text not null
) strict;

create table revisions (
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

create trigger revisions_never_change before update on revisions
begin select raise(abort, 'a revision never changes'); end;

create trigger revisions_never_go before delete on revisions
begin select raise(abort, 'a revision is never deleted'); end;

create trigger revisions_follow_one_another before insert on revisions
when new.number is not (select coalesce(max(number), 0) + 1 from revisions where design = new.design)
begin select raise(abort, 'a revision takes the next number'); end;
`
