/** Moves labels on a line apart until none touches its neighbour, each as little as possible. */

/** A label on a line: where it would like its middle to be, and its length with the gap to keep. */
export interface Wanted {
  readonly at: number
  readonly length: number
}

interface Cluster {
  /** Indices in the order they stand. */
  readonly members: readonly number[]
  readonly length: number
  readonly middle: number
}

/**
 * @param room the stretch to stay in; labels that are longer together than the stretch leave it at its end rather than cover each other
 * @returns the middle of each label, in the order given
 */
export function spread(wanted: readonly Wanted[], room: { readonly least: number; readonly most: number }): readonly number[] {
  const order = wanted.map((_, index) => index).sort((one, other) => wanted[one].at - wanted[other].at || one - other)
  let clusters = order.map((index) =>
    clusterOf({ members: [index], length: wanted[index].length, middle: wanted[index].at }, room),
  )
  // Each round joins two clusters, so that there are fewer rounds than labels.
  for (let round = 0; round < wanted.length; round += 1) {
    const touching = clusters.findIndex((cluster, index) => index > 0 && touches(clusters[index - 1], cluster))
    if (touching < 0) break
    const joined = clusterOf(merged(clusters[touching - 1], clusters[touching]), room)
    clusters = [...clusters.slice(0, touching - 1), joined, ...clusters.slice(touching + 1)]
  }
  const places = wanted.map(({ at }) => at)
  for (const { members, length, middle } of clusters) {
    let start = middle - length / 2
    for (const index of members) {
      places[index] = start + wanted[index].length / 2
      start += wanted[index].length
    }
  }
  return places
}

/** The cluster moved into the room. */
function clusterOf(cluster: Cluster, room: { readonly least: number; readonly most: number }): Cluster {
  const middle = Math.max(room.least + cluster.length / 2, Math.min(cluster.middle, room.most - cluster.length / 2))
  return { ...cluster, middle }
}

function touches(one: Cluster, other: Cluster): boolean {
  return other.middle - one.middle < (one.length + other.length) / 2 - 1e-9
}

function merged(one: Cluster, other: Cluster): Cluster {
  const members = [...one.members, ...other.members]
  const middle = (one.middle * one.members.length + other.middle * other.members.length) / members.length
  return { members, length: one.length + other.length, middle }
}
