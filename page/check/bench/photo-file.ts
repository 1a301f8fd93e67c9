/** A photo as the bench book takes it. */
export interface PhotoFile {
  readonly type: 'image/jpeg' | 'image/png'
  readonly base64: string
}

/** What the bench book takes of one photo. */
const PHOTO_most_bytes = 2_000_000
/** Longest side of a photo that had to be made smaller: a screw head on a whole rig is still seen. */
const SIDE_most_px = 1600
const QUALITY = 0.85

/** A photo for the bench book; one that is too large or of another kind is drawn smaller. @throws Error in words when it is no picture */
export async function photoFile(file: File): Promise<PhotoFile> {
  const { type } = file
  // What a file is called says nothing of what is in it.
  const picture = await createImageBitmap(file).catch(() => {
    throw new Error(`Not kept: ${file.name} is no picture that this browser can read.`)
  })
  const isTaken = (type === 'image/jpeg' || type === 'image/png') && file.size <= PHOTO_most_bytes
  return isTaken
    ? { type, base64: await inLetters(file) }
    : { type: 'image/jpeg', base64: await inLetters(await smaller(picture)) }
}

function smaller(picture: ImageBitmap): Promise<Blob> {
  const scale = Math.min(1, SIDE_most_px / Math.max(picture.width, picture.height))
  const canvas = new OffscreenCanvas(Math.round(picture.width * scale), Math.round(picture.height * scale))
  canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height)
  return canvas.convertToBlob({ type: 'image/jpeg', quality: QUALITY })
}

/** Bytes that become letters at a time: a call takes only so many arguments. */
const BYTES_at_once = 8192

async function inLetters(blob: Blob): Promise<string> {
  const bytes = new Uint8Array(await blob.arrayBuffer())
  const parts: string[] = []
  for (let at = 0; at < bytes.length; at += BYTES_at_once)
    parts.push(String.fromCharCode(...bytes.subarray(at, at + BYTES_at_once)))
  return btoa(parts.join(''))
}
