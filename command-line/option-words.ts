/** What `--store` means. */
export const STORE = 'folder of the store; else FINGERWRIGHT_STORE names it, else it is in your data folder'

/** What a design file is. */
export const DESIGN = 'design file (JSON); - reads the standard input'

/** What names a revision. */
export const REVISION = 'number of a revision, or draft'
