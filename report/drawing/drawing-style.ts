/**
 * The style of drawings and plots: one ink, line types by ISO 128 (wide 1.4 px, narrow 0.7 px), colours by variables that a page sets
 * for its themes. Files written by the command line carry it inside, with the light colours as they stand here.
 */
export const drawingStyle = `
.drawing { fill: none; font-family: 'Source Sans 3', 'Source Sans Pro', 'Helvetica Neue', Arial, sans-serif; font-variant-numeric: tabular-nums lining-nums; }
.drawing text { fill: var(--ink, #1d2733); }
.drawing .part { fill: var(--metal, #f1ede3); stroke: var(--ink, #1d2733); stroke-width: 1.4; stroke-linejoin: round; }
.drawing .part-link { fill: var(--metal-link, #e9e3d4); }
.drawing .hatch-line { stroke: var(--ink-soft, #56606b); stroke-width: 0.8; }
.drawing .hidden { stroke: var(--ink-soft, #56606b); stroke-width: 0.8; stroke-dasharray: 5 3; }
.drawing .clash-line { stroke: var(--short, #9c2f1b); stroke-width: 1.6; }
.drawing .overlap { stroke: var(--short, #9c2f1b); stroke-width: 1.6; }
.drawing .looked-at { stroke: var(--touch, #0b6459); stroke-width: 2.5; }
.drawing .phantom { stroke: var(--ink-soft, #56606b); stroke-width: 0.7; stroke-dasharray: 14 3 2 3 2 3; opacity: 0.65; }
.drawing .path { stroke: var(--ink-soft, #56606b); stroke-width: 0.8; stroke-dasharray: 12 3 2 3; }
.drawing .pin { fill: var(--paper, #fbf9f3); stroke: var(--ink, #1d2733); stroke-width: 1.2; }
.drawing .centre { stroke: var(--ink, #1d2733); stroke-width: 0.6; }
.drawing .pad { fill: var(--ink, #1d2733); }
.drawing .spring { stroke: var(--ink, #1d2733); stroke-width: 1; stroke-linejoin: round; }
.drawing .stop-edge { stroke: var(--ink, #1d2733); stroke-width: 3; stroke-linecap: round; }
.drawing .stop-round { stroke: var(--ink, #1d2733); stroke-width: 1; stroke-dasharray: 2 2; }
.drawing .leader, .drawing .extension { stroke: var(--ink-soft, #56606b); stroke-width: 0.7; }
.drawing .extension { stroke-dasharray: 12 3 2 3; }
.drawing .action { stroke: var(--ink, #1d2733); stroke-width: 0.9; }
.drawing .shaft { stroke: var(--ink, #1d2733); }
.drawing .force.shaft { stroke-width: 2; }
.drawing .measure.shaft { stroke-width: 0.8; }
.drawing .head { fill: var(--ink, #1d2733); stroke: none; }
.drawing .friction { fill: var(--friction, #1d273333); stroke: var(--ink, #1d2733); stroke-width: 0.9; }
.drawing .ring { stroke: var(--ink, #1d2733); stroke-width: 0.8; }
.drawing .detail-paper { fill: var(--paper, #fbf9f3); }
.drawing text.name { fill: var(--ink-soft, #56606b); font-style: italic; }
.drawing text.value, .drawing text.dimension { font-weight: 600; }
.drawing text.value, .drawing text.dimension, .drawing text.name { paint-order: stroke; stroke: var(--paper, #fbf9f3); stroke-width: 3; stroke-linejoin: round; }
.drawing text.caption, .drawing text.axis, .drawing text.unit { fill: var(--ink-soft, #56606b); }
.drawing text.detail-title, .drawing text.plot-title { font-weight: 600; }
.drawing .axis-line, .drawing .tick { stroke: var(--ink, #1d2733); stroke-width: 0.9; }
.drawing .beyond { stroke: var(--ink, #1d2733); stroke-width: 0.9; stroke-dasharray: 2 3; }
.drawing .grid { stroke: var(--rule, #ded8c9); stroke-width: 0.8; }
.drawing .zero { stroke: var(--ink-soft, #56606b); stroke-width: 0.8; }
.drawing .curve { stroke: var(--ink, #1d2733); stroke-width: 1.6; stroke-linejoin: round; stroke-linecap: round; }
.drawing .curve.second { stroke-dasharray: 7 4; }
.drawing .curve.third { stroke-dasharray: 1.5 4; stroke-width: 2.2; }
.drawing .curve.fourth { stroke-dasharray: 12 3 2 3; }
.drawing .bound { stroke: var(--short, #9c2f1b); stroke-width: 1; stroke-dasharray: 9 3; }
.drawing text.bound { fill: var(--short, #9c2f1b); stroke: none; }
.drawing .gap { fill: var(--gap, #1d27330d); stroke: none; }
.drawing .event { fill: var(--ink, #1d2733); }
.drawing .pointer { stroke: var(--touch, #0b6459); stroke-width: 1.4; }
.drawing .pointer-dot { fill: var(--touch, #0b6459); }
.drawing.proposed * { stroke: var(--touch, #0b6459); stroke-width: 1.6; stroke-dasharray: 6 3; fill: none; }
.drawing .metal-only .part { stroke: none; }
.drawing .earlier * { fill: none; stroke: var(--ink, #1d2733); stroke-width: 1.1; stroke-dasharray: 6 3.5; }
.drawing .earlier .centre { stroke: none; }
.drawing .earlier .pad { stroke-dasharray: none; }
.drawing .later .part, .drawing .later .pin { fill: none; }
.drawing .later .stop-round { stroke-dasharray: none; }
`
