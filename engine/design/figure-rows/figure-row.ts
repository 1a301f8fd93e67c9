/** Inside units of a figure. Doors show `rad` in degrees and may turn mm, N and MPa into inch, lbf and ksi. */
export type FigureUnit = 'rad' | 'mm' | 'N' | 'N·mm' | 'N·mm per pin' | 'MPa' | '1' | 'yes or no' | 'words'

/** `drive` is rad or mm, `effort` N·mm or N by the kind of drive; `release` and `keeper` N or N·mm by the kind of port. */
export type RowUnit = FigureUnit | 'drive' | 'effort' | 'release' | 'keeper'

/** A row of the catalogue: one figure, or one of each of the things that its name has in brackets. */
export type FigureRow = readonly [name: string, unit: RowUnit, title: string]
