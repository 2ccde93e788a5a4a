"""Facts as pictures: a block, a unit, a step, a strip, a border, a quilt.

Takes:    facts.
Gives:    figures of marks with their alternative texts.
Measures: points at real size, x to the right and y downward; exact becomes float here.
Reports:  nothing.
Does not know: pages, PDF, SVG.

A tour: `placing` turns exact places into points on the page, once; `arcs` does so for curved edges. `block` draws
blocks and units (with `block_letters` and `block_applique`), `step` a sewing step, `scene` a lesson's (with
`scene_placing` and `tools`), `strip` a strip and its cuts, `quilt`, `border`, `prints` and `finishing` a quilt,
`drafting` the grid that a block is drafted on; `hands` a step apart and joined, `cloth` how cloth is cut, `spread`
which block is of which print, `qr` an address as a code.
"""
