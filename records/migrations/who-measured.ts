/** Schema 5: a reading may say who measured and on which day, where that is another than who entered it and when. */

/** The statements of schema 5. */
export const whoMeasured = `
alter table readings add column measured_by text check (measured_by <> '');

alter table readings add column measured_on text check (measured_on like '____-__-__');
`
