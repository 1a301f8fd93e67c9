/** Moves labels on a line apart until none touches its neighbour, each as little as possible. */

/**
 * @param wanted where each label would like to be
 * @param room least distance between two, and the stretch to stay in
 * @returns one place a label, in the order given; with more labels than room the last ones leave the stretch rather than cover others
 */
export function spread(
  wanted: readonly number[],
  room: { readonly apart: number; readonly least: number; readonly most: number },
): readonly number[] {
  const order = wanted.map((_, index) => index).sort((one, other) => wanted[one] - wanted[other] || one - other)
  let clusters: { readonly members: readonly number[]; readonly centre: number }[] = order.map((index) => ({
    members: [index],
    centre: wanted[index],
  }))
  for (let round = 0; round < wanted.length; round += 1) {
    const touching = clusters.findIndex((cluster, index) => index > 0 && touches(clusters[index - 1], cluster, room.apart))
    if (touching < 0) break
    clusters = [
      ...clusters.slice(0, touching - 1),
      merged(clusters[touching - 1], clusters[touching]),
      ...clusters.slice(touching + 1),
    ]
  }
  const places = [...wanted]
  for (const { members, centre } of clusters) {
    const length = (members.length - 1) * room.apart
    const start = Math.max(room.least, Math.min(centre - length / 2, room.most - length))
    for (const [step, index] of members.entries()) places[index] = start + step * room.apart
  }
  return places
}

interface Cluster {
  readonly members: readonly number[]
  readonly centre: number
}

function touches(one: Cluster, other: Cluster, apart: number): boolean {
  const reach = ((one.members.length + other.members.length) / 2) * apart
  return other.centre - one.centre < reach
}

function merged(one: Cluster, other: Cluster): Cluster {
  const members = [...one.members, ...other.members]
  const centre = (one.centre * one.members.length + other.centre * other.members.length) / members.length
  return { members, centre }
}
