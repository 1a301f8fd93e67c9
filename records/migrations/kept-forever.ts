/** What tables of the bench book share: who signs, how an entry is corrected, and that none is ever changed. */

/** What every entry ends with: who made it, and when it came into the store. */
export const SIGNED = `who text not null check (who <> ''),
  made text not null`

/** The key of an entry that has a number of its own. */
export const ID = 'id = new.id'

/** Columns of a correction: it says why, and is the only one of what it corrects. @param table that it is in */
export const corrects = (table: string): string => `corrects integer unique references ${table} (id),
  reason text,
  check ((corrects is null) = (reason is null))`

/**
 * Triggers that refuse to change, delete or replace an entry, whatever program asks.
 *
 * @param keys conditions under which SQLite would take a new entry for one that is there, and put it in its place
 */
export function keptForever(table: string, keys: readonly string[]): string {
  const taken = keys.map((key) => `(${key})`).join(' or ')
  return `
create trigger ${table}_never_change before update on ${table}
begin select raise(abort, 'an entry never changes'); end;

create trigger ${table}_never_go before delete on ${table}
begin select raise(abort, 'an entry is never deleted'); end;

create trigger ${table}_are_never_replaced before insert on ${table}
when exists (select 1 from ${table} where ${taken})
begin select raise(abort, 'an entry is never replaced'); end;
`
}
