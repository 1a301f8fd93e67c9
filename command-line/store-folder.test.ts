import { homedir } from 'node:os'
import { join, resolve } from 'node:path'
import { describe, expect, it } from 'vitest'
import { storeFolder } from './store-folder.ts'

const folderIn = (environment: Readonly<Record<string, string>>, option?: string) => storeFolder(option, { environment })

describe('the folder of the store', () => {
  it('is the one that --store names, before every other', () => {
    expect(folderIn({ FINGERWRIGHT_STORE: '/data/other', HOME: '/data/me' }, 'here')).toBe(resolve('here'))
  })

  it('is else the one that FINGERWRIGHT_STORE names', () => {
    expect(folderIn({ FINGERWRIGHT_STORE: '/data/other', XDG_DATA_HOME: '/data' })).toBe('/data/other')
    expect(folderIn({ FINGERWRIGHT_STORE: 'other' })).toBe(resolve('other'))
  })

  it('is else in the data folder, where an empty name counts as none', () => {
    expect(folderIn({ FINGERWRIGHT_STORE: '', XDG_DATA_HOME: '/data' })).toBe('/data/fingerwright')
    expect(folderIn({ HOME: '/data/me' })).toBe('/data/me/.local/share/fingerwright')
    expect(folderIn({})).toBe(join(homedir(), '.local/share/fingerwright'))
  })

  it('is not in a data folder that is relative: it would wander with the working folder', () => {
    expect(folderIn({ XDG_DATA_HOME: 'data', HOME: '/data/me' })).toBe('/data/me/.local/share/fingerwright')
  })

  it('is refused under an empty name', () => {
    expect(() => folderIn({}, '')).toThrow('--store')
  })
})
