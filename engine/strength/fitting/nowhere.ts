/** Ends of a spring that is only proposed: its places are those of the design, once it is taken over. */
export const NOWHERE = {
  id: 'proposed',
  from: { part: 0, at: { x_mm: 0, y_mm: 0 } },
  to: { part: 0, at: { x_mm: 0, y_mm: 0 } },
  ownFriction_ratio: 0,
} as const
