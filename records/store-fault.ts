import { type Problem, sentence } from '../engine/index.ts'

/** A store that cannot be opened, read or written. Its message is a whole sentence with the place and a way out. */
export class StoreFault extends Error {
  readonly problem: Problem

  constructor(file: string, problem: Problem, cause?: unknown) {
    super(sentence(file, problem), { cause })
    this.problem = problem
  }
}

type Trouble = Omit<Problem, 'place'>

const KEPT = 'What was saved before is kept.'

const full: Trouble = {
  code: 'disk full',
  found: 'no room is left on the disk',
  needed: 'room for the store',
  wayOut: `Make room and save again. ${KEPT}`,
}
const readOnly: Trouble = {
  code: 'read only',
  found: 'a place that may only be read',
  needed: 'a folder and a file that may be written',
  wayOut: `Allow writing there, or name another folder with --store. ${KEPT}`,
}
const refusing: Trouble = {
  code: 'disk refuses',
  found: 'a disk that refuses to be read or written',
  needed: 'a disk in order',
  wayOut: `Look after the disk, then save again. ${KEPT}`,
}
const busy: Trouble = {
  code: 'store busy',
  found: 'another program that has been writing to the store for several seconds',
  needed: 'a moment without it',
  wayOut: 'Save again; if it lasts, look which programs have the store open.',
}
const broken: Trouble = {
  code: 'store damaged',
  found: 'a damaged store',
  needed: 'a store in order',
  wayOut: 'Leave the file as it is, put a copy of the store in its place, or name another folder with --store.',
}
const noStore: Trouble = {
  code: 'no store',
  found: 'a file that is no store of Fingerwright',
  needed: 'a store, or a folder without one',
  wayOut: 'Name another folder with --store; the file is left as it is.',
}
const noFolder: Trouble = {
  code: 'no folder',
  found: 'a place where no folder can be',
  needed: 'a folder for the store',
  wayOut: 'Name another folder with --store.',
}
const notThere: Trouble = {
  code: 'no file',
  found: 'nothing at this place, or nothing that may be opened',
  needed: 'a file that may be read',
  wayOut: 'Look whether the path is spelt rightly.',
}
const taken: Trouble = {
  code: 'file exists',
  found: 'a file that exists already',
  needed: 'a free name',
  wayOut: 'Choose another name; the file is left as it is.',
}

/** By SQLite's and the operating system's codes; of SQLite's extended codes the first two words decide. */
const TROUBLES: Readonly<Record<string, Trouble>> = {
  SQLITE_FULL: full,
  ENOSPC: full,
  EDQUOT: full,
  SQLITE_READONLY: readOnly,
  EACCES: readOnly,
  EPERM: readOnly,
  EROFS: readOnly,
  SQLITE_IOERR: refusing,
  EIO: refusing,
  EFBIG: refusing,
  SQLITE_BUSY: busy,
  SQLITE_LOCKED: busy,
  SQLITE_CORRUPT: broken,
  SQLITE_NOTADB: noStore,
  SQLITE_CANTOPEN: notThere,
  ENOENT: notThere,
  EISDIR: notThere,
  ENOTDIR: noFolder,
  ENAMETOOLONG: noFolder,
  ELOOP: noFolder,
  EEXIST: taken,
}

/** The faults that are no fault of a file but found out here. */
export const troubles = { noStore, noFolder, broken, readOnly } as const

/** Turns a fault of SQLite or of the file system into a `StoreFault`; any other fault stays as it is. */
export function asStoreFault(error: unknown, file: string): unknown {
  if (error instanceof StoreFault || !(error instanceof Error) || !('code' in error)) return error
  const code = String(error.code)
  const trouble = TROUBLES[code] ?? TROUBLES[code.split('_').slice(0, 2).join('_')]
  if (trouble === undefined) return error
  return new StoreFault(file, { ...trouble, place: '', found: `${trouble.found} (${code})` }, error)
}

/** Runs one piece of work on a store's file; faults of SQLite and of the file system come out as `StoreFault`. */
export function onFile<Result>(file: string, work: () => Result): Result {
  try {
    return work()
  } catch (error) {
    throw asStoreFault(error, file)
  }
}
