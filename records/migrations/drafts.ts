/** Schema 2: the draft of a design with its undo history. `text` is `base` with the first `position` steps done. */
export const drafts = `
create table drafts (
  design integer primary key references designs (id),
  version integer not null check (version >= 1),
  base text not null,
  text text not null,
  position integer not null check (position >= 0),
  given text,
  saved text not null
) strict;

create table draft_steps (
  design integer not null references drafts (design),
  number integer not null check (number >= 0),
  splice text not null check (json_valid(splice)),
  said text not null,
  primary key (design, number)
) strict;

create trigger draft_versions_grow before update on drafts
when new.version <= old.version
begin select raise(abort, 'the version of a draft grows'); end;
`
