import { readdirSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { basename, join } from 'node:path'
import { freeName } from '../records/index.ts'

/** The design files that a server may hand out, by name. No other file can be asked for. */
export interface DesignShelf {
  readonly names: readonly string[]
  /** The bytes of a design as they are on disk now; undefined for a name that is not on the shelf or a file that has gone. */
  readonly read: (name: string) => Promise<Uint8Array | undefined>
}

/** Name of a design: its file name without folder and ending. */
export function designName(file: string): string {
  return basename(file).replace(/\.json$/i, '')
}

/**
 * Puts design files on a shelf. Two files of one name are both kept; the later one is called `name-2`, `name-3` …
 *
 * @param files paths, in the order in which they are to be listed
 */
export function shelve(files: readonly string[]): DesignShelf {
  const places = new Map<string, string>()
  for (const file of files)
    places.set(
      freeName(designName(file), (name) => places.has(name)),
      file,
    )
  return {
    names: [...places.keys()],
    read: async (name) => {
      const file = places.get(name)
      return file === undefined ? undefined : readIfThere(file)
    },
  }
}

/** Design files of a folder in the order of their names; none when the folder is not there. */
export function designFilesIn(folder: string): readonly string[] {
  try {
    const names = readdirSync(folder).filter((name) => name.endsWith('.json'))
    return names.sort(byDesignName).map((name) => join(folder, name))
  } catch (error) {
    if (isMissing(error)) return []
    throw error
  }
}

/** By the name without its ending, so that `heron` comes before `heron-jams`. */
function byDesignName(one: string, other: string): number {
  return designName(one) < designName(other) ? -1 : 1
}

async function readIfThere(file: string): Promise<Uint8Array | undefined> {
  try {
    return await readFile(file)
  } catch (error) {
    if (isMissing(error)) return undefined
    throw error
  }
}

function isMissing(error: unknown): boolean {
  return error instanceof Error && 'code' in error && (error.code === 'ENOENT' || error.code === 'ENOTDIR')
}
