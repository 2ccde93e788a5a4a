"""Every problem that blockdsl can report: its code, its severity, and its message.

A new problem is one entry here and one page in tests/spec/problems.
"""

from __future__ import annotations

from typing import Literal

from msgspec import Struct

Severity = Literal["error", "warning"]


class Entry(Struct, frozen=True):
    """One kind of problem. `message` is a format string; `meaning` is one sentence for the docs."""

    severity: Severity
    message: str
    meaning: str


CATALOGUE: dict[str, Entry] = {
    # --- the file
    "file-unreadable": Entry(
        "error",
        "the file cannot be read: {why}",
        "The file is missing, is not text, or may not be opened.",
    ),
    "file-too-large": Entry(
        "error",
        "the file is larger than 1 MiB",
        "A block file is a page or two of notes; a file larger than 1 MiB is refused unread.",
    ),
    "too-many-mistakes": Entry(
        "error",
        "more than 100 lines cannot be read; the rest of the file was not checked",
        "A file with this many mistakes is probably not a block file.",
    ),
    "letter-not-in-font": Entry(
        "warning",
        "the page font has no {letters}",
        "Letters missing from the font are printed as empty boxes.",
    ),
    "font-unreadable": Entry(
        "error",
        "{path} is not a font",
        "The maker's own font is a TrueType or OpenType file.",
    ),
    "control-character": Entry(
        "error",
        "there is an invisible control character ({name}) here",
        "The line contains a character that cannot be seen or printed.",
    ),
    # --- the words of a line
    "comment-needs-space": Entry(
        "error",
        "`{text}` is neither a comment nor a colour",
        "A comment is `#` and a space; a colour is `#` and six digits.",
    ),
    "colour-not-six-digits": Entry(
        "error",
        "`{text}` is not a colour: a colour is `#` and six digits 0-9 or a-f",
        "The colour has too few or too many digits, or a letter other than a to f.",
    ),
    "quote-not-closed": Entry(
        "error",
        "the quotation mark is not closed",
        "Quoted text begins here, and the line ends before the closing mark.",
    ),
    "bracket-not-closed": Entry(
        "error",
        "the bracket is not closed",
        "A shape in brackets begins here, and the line ends before the closing bracket.",
    ),
    "bracket-not-opened": Entry(
        "error",
        "this closing bracket has no opening one",
        "There is a closing bracket without an opening one.",
    ),
    "bracket-inside-bracket": Entry(
        "error",
        "a shape cannot go inside another shape",
        "A shape takes fabrics and numbers; to put one shape inside another, name the inner one as a unit.",
    ),
    "nesting-too-deep": Entry(
        "error",
        "this is nested more than 32 levels deep",
        "Brackets, or units made of units, are nested more than 32 levels deep.",
    ),
    "turn-apart": Entry(
        "error",
        "there is a space between the turn `{turn}` and its cell",
        "Turns are written right after the cell, without a space.",
    ),
    "pair-apart": Entry(
        "error",
        "there is a space around the `{slope}` of a pair",
        "A pair of triangles is written without spaces, because it is one cell.",
    ),
    "name-needs-letter": Entry(
        "error",
        "`{name}` is not a name: a name starts with a letter",
        "The name of a fabric or unit begins with a digit or a sign.",
    ),
    "number-over-zero": Entry(
        "error",
        "`{text}` divides by zero",
        "The bottom number of the fraction is 0.",
    ),
    "number-too-long": Entry(
        "error",
        "the number has too many digits",
        "A number with more than 30 digits is probably a typo.",
    ),
    "length-needs-unit": Entry(
        "error",
        "`{text}` needs a unit: inches or centimetres",
        "A length is a number and its unit: `in`, `cm` or `mm`.",
    ),
    "fabric-label-missing": Entry(
        "error",
        "the fabric `{name}` has no label",
        "A fabric needs a label in quotation marks: it is what the pages print.",
    ),
    "fabric-colour-missing": Entry(
        "error",
        "the fabric `{name}` has no colour",
        "A fabric needs a colour for the drawings.",
    ),
    "words-empty": Entry(
        "error",
        "there are no words between the quotation marks",
        "A title, a label or a note needs at least one letter.",
    ),
    "row-empty": Entry(
        "error",
        "the row has no cells",
        "A `row` line needs at least one fabric, unit or shape.",
    ),
    "line-ends-early": Entry(
        "error",
        "the line is not complete: {wanted} should come next",
        "The end of the line is missing.",
    ),
    "word-unexpected": Entry(
        "error",
        "`{found}` does not belong here; {wanted} should come next",
        "This kind of line needs a different word or sign here.",
    ),
    # --- lines and declarations
    "line-unknown": Entry(
        "error",
        "no line begins with `{word}`",
        "The first word of a line says what kind of line it is, and there is no such kind.",
    ),
    "word-renamed": Entry(
        "error",
        "`{word}` is now called `{now}`",
        "A word of the language has been replaced by the one that quilters use.",
    ),
    "line-outside-declaration": Entry(
        "error",
        "the `{keyword}` line has no unit or block above it",
        "Lines such as `row` and `size` belong to the unit or block above them.",
    ),
    "line-does-not-belong": Entry(
        "error",
        "a `{keyword}` line does not belong in {place}",
        "Some lines belong only in a block; a unit, for example, has no size of its own.",
    ),
    # --- quilts
    "quilt-without-blocks": Entry(
        "error",
        'the quilt "{name}" has no setting',
        "A quilt needs a `set` line, or rows that name its blocks.",
    ),
    "blocks-differ-in-size": Entry(
        "error",
        '"{one}" is {size} and "{other}" is {else_size}: blocks in one setting must be the same size',
        "All the blocks in a setting have the same finished size.",
    ),
    "block-does-not-fit": Entry(
        "error",
        '"{name}" does not fit this setting: {why}',
        "An oblong block cannot be set on point or turned on its side; curves and appliqué cannot be cut in half.",
    ),
    "fill-missing": Entry(
        "error",
        "no fabric is given for {wanted}",
        "Blocks set on point need setting triangles, and a strippy quilt needs strips.",
    ),
    "sash-too-wide": Entry(
        "error",
        "with {width} sashing nothing is left of the half blocks",
        "In dropped columns, a half block is half the height of a block less one sash.",
    ),
    "border-too-wide": Entry(
        "error",
        "a {word} of {width} is wider than the quilt inside it",
        "A border wider than the quilt inside it is probably a typo.",
    ),
    "border-does-not-divide": Entry(
        "error",
        "units of {length} do not fit evenly along {sides}",
        "A pieced border needs a whole number of units on every side.",
    ),
    "border-corners": Entry(
        "error",
        "{what}",
        "Border corners are butted, mitred or squares; a pieced border is never mitred.",
    ),
    "count-cannot-be": Entry(
        "error",
        "no quilt has {count} blocks {how}",
        "The rows and columns of a setting make some numbers of blocks and no others.",
    ),
    "too-many-blocks": Entry(
        "error",
        "{found} blocks are too many for one quilt",
        "A quilt can have at most 10,000 blocks.",
    ),
    "count-not-whole": Entry(
        "error",
        "a {what} of {number} is not a whole number",
        "Blocks and fat quarters are counted in whole numbers.",
    ),
    "setting-fixed": Entry(
        "error",
        "this quilt cannot be set in another way: {why}",
        "The command asks for another setting, but the lines of this quilt allow only one.",
    ),
    "line-idle": Entry(
        "warning",
        "`{what}` changes nothing here: {why}",
        "The line has no effect in this setting; something else was probably intended.",
    ),
    "prints-too-few": Entry(
        "warning",
        "{pairs} of blocks side by side have the same print of `{name}` from {prints}; {least}",
        "There are too few prints to keep neighbouring blocks different.",
    ),
    "fat-quarters-too-few": Entry(
        "warning",
        "the fat quarters are not enough for `{name}`: {what}",
        "More fat quarters are needed to cut the blocks.",
    ),
    "quilt-off-ruler": Entry(
        "warning",
        "{what} of {length} does not fall on the marks of a ruler that reads {measure}",
        "Sizes between two ruler marks are cut to the next mark, so strips and half blocks come out too large.",
    ),
    "expect-blocks": Entry(
        "error",
        'expected {wanted} blocks of "{name}", but the quilt has {got}',
        "The `expect blocks` line does not match the quilt.",
    ),
    # --- names
    "name-unknown": Entry(
        "error",
        "there is no {kind} `{name}`",
        "The file does not declare this name.",
    ),
    "name-twice": Entry(
        "error",
        "there is already a {kind} `{name}`",
        "Two declarations have the same name, so a cell could mean either.",
    ),
    "value-unknown": Entry(
        "error",
        "`{name}` is not a value: write `light`, `medium` or `dark`",
        "The value of a fabric is light, medium or dark.",
    ),
    "setting-twice": Entry(
        "error",
        "`{what}` is given twice",
        "A setting such as `size` can be given only once in a declaration.",
    ),
    "fabric-unused": Entry(
        "warning",
        "the fabric `{name}` is not used",
        "No cell, unit or colourway uses this fabric.",
    ),
    "setting-too-large": Entry(
        "error",
        "this {what} is too large; probably a typo",
        "The seam allowance, trim or ruler measure is far larger than any in use.",
    ),
    "piece-wider-than-fabric": Entry(
        "warning",
        "{piece} is too wide for `{name}`: the usable width is {width}",
        "The piece is wider than the fabric in both directions.",
    ),
    "brought-in-twice": Entry(
        "warning",
        "`{one}` and `{other}` both declare {names}; the last one is used",
        "Two of the files brought in with `use` declare the same name, and only one can be used.",
    ),
    "colourway-idle": Entry(
        "warning",
        "the block does not use `{name}`, so the colourway has nothing to change",
        "The colourway replaces a fabric that the block does not use.",
    ),
    "colourway-merges": Entry(
        "warning",
        "in the colourway `{name}`, `{one}` and `{other}` both become `{becomes}` and lie side by side",
        "The colourway gives neighbouring patches the same fabric, so they look like one patch.",
    ),
    "contrast-low": Entry(
        "warning",
        "`{one}` and `{other}` have too little contrast",
        "The colours of two neighbouring fabrics are so close that the pattern is lost.",
    ),
    # --- other files
    "use-missing": Entry(
        "error",
        'there is no file "{path}"',
        "The `use` or `text` line names a file that does not exist.",
    ),
    "use-cycle": Entry(
        "error",
        '"{path}" uses itself',
        "Files that use each other in a circle can never be read to the end.",
    ),
    "use-leaves-project": Entry(
        "error",
        '"{path}" is outside the project folder',
        "A `use` or `text` line can only name files inside the project folder.",
    ),
    "library-unknown": Entry(
        "error",
        'there is no library "{name}"',
        "blockdsl comes with no library of this name.",
    ),
    # --- shapes and units
    "shape-unknown": Entry(
        "error",
        "there is no shape `{name}`",
        "The first word in brackets, or after `unit NAME =`, must be a shape.",
    ),
    "shape-needs-brackets": Entry(
        "error",
        "the shape `{name}` needs brackets around it",
        "In a row, a shape and its words go in brackets, because they are one cell.",
    ),
    "shape-words": Entry(
        "error",
        "the shape `{shape}` is written `{usage}`",
        "Each shape needs its own words, in its own order.",
    ),
    "unit-does-not-fit": Entry(
        "error",
        "`{name}` is {wants} (width to height), but its cell is {gets}",
        "A unit can be enlarged or reduced to fit its cell, but not stretched.",
    ),
    "unit-cycle": Entry(
        "error",
        "the unit `{name}` contains itself",
        "A unit that contains itself can never be finished.",
    ),
    # --- the grid
    "rows-missing": Entry(
        "error",
        "the {kind} `{name}` has no rows",
        "A block or unit needs rows or free patches; a unit can also be a shape.",
    ),
    "row-too-long": Entry(
        "error",
        "the row has {found}; the first row has {wanted}",
        "All the rows of a unit or block have the same number of cells.",
    ),
    "row-too-short": Entry(
        "error",
        "the row has {found}; the first row has {wanted}",
        "All the rows of a unit or block have the same number of cells.",
    ),
    "columns-do-not-match": Entry(
        "error",
        "`columns` gives {found} widths; the rows have {wanted} cells",
        "There must be one relative width for each cell in a row.",
    ),
    "heights-do-not-match": Entry(
        "error",
        "`heights` gives {found} heights; there are {wanted} rows",
        "There must be one relative height for each row.",
    ),
    "nothing-to-continue": Entry(
        "error",
        "there is no cell {where} to continue",
        "`-` continues the cell on its left, and `|` the cell above.",
    ),
    "continue-not-rectangular": Entry(
        "error",
        "the continued cell is not a rectangle",
        "A cell that covers several places must be a rectangle.",
    ),
    "grid-mixed": Entry(
        "error",
        "rows and free patches are mixed",
        "A unit or block is drawn with rows or with free patches, not both.",
    ),
    "too-many-cells": Entry(
        "error",
        "the grid has more than 200 by 200 cells",
        "A grid can have at most 200 rows and 200 columns.",
    ),
    "too-many-patches": Entry(
        "error",
        "there are more than 100,000 patches",
        "A block can have at most 100,000 patches.",
    ),
    "grid-too-fine": Entry(
        "error",
        "no graph paper is fine enough for the {what}",
        "Columns, rows and corners lie on one even grid; numbers with very many digits make it too fine to draw.",
    ),
    "too-many-units": Entry(
        "error",
        "there are more than 100,000 units",
        "A block can have at most 100,000 units, including units inside other units.",
    ),
    # --- free patches
    "patches-overlap": Entry(
        "error",
        "patches overlap: {patches} share {area}, near {place}",
        "Two patches overlap, so they cannot be sewn flat.",
    ),
    "applique-path": Entry(
        "error",
        "the outline of this appliqué piece cannot be read: {why}",
        "An appliqué piece is one closed outline, drawn with the path commands of SVG in the squares of the grid.",
    ),
    "applique-outside": Entry(
        "error",
        "this appliqué piece extends beyond its block or unit",
        "A piece that extends beyond the edge would be caught in the next seam.",
    ),
    "turn-under-odd": Entry(
        "error",
        "a turn-under of {length} is too wide",
        "The turn-under allowance is folded under the edge; more than 1 in does not lie flat.",
    ),
    "curve-too-tight": Entry(
        "error",
        "the curve of `{name}` is too tight to sew: its radius is {radius}",
        "A concave edge needs a radius of more than twice the seam allowance, or the allowance closes it up.",
    ),
    "patches-leave-gap": Entry(
        "error",
        "the patches leave a gap of {area}, near {place}",
        "No patch covers part of the grid: there would be a hole.",
    ),
    "patch-outside": Entry(
        "error",
        "{area} of the patch lies outside the grid, near {place}",
        "The patch extends beyond the edge of the grid.",
    ),
    "patch-not-simple": Entry(
        "error",
        "the edge of the patch crosses itself",
        "The corners of a patch go around it once, in order, without crossing.",
    ),
    "patch-too-few-corners": Entry(
        "error",
        "the patch has fewer than three corners",
        "A patch needs at least three corners that are not in one line.",
    ),
    # --- sizes
    "size-missing": Entry(
        "error",
        'the block "{name}" has no size',
        "A block needs its finished size before anything can be cut.",
    ),
    "size-too-oblong": Entry(
        "error",
        "a block of this size is too long and narrow",
        "A block more than a thousand times as long as it is wide cannot be shown on a page.",
    ),
    "size-too-large": Entry(
        "error",
        "the size is larger than 10 m",
        "A block can be at most 10 m wide or high.",
    ),
    "length-not-positive": Entry(
        "error",
        "the {what} must be greater than zero",
        "A length or a count must be greater than zero.",
    ),
    "units-mixed": Entry(
        "error",
        "inches and centimetres are mixed",
        "A block is measured in inches or in centimetres, not both.",
    ),
    "size-off-ruler": Entry(
        "warning",
        "a cell of {cell} does not fall on the marks of a ruler that reads {measure}",
        "A finished size between two ruler marks cannot be cut exactly.",
    ),
    "rounding-adds-up": Entry(
        "warning",
        "rounding to {measure} adds up: {what}, so seams end up more than {off} out of place",
        "Cut sizes are rounded up to the ruler's marks. Along a row of slanted pieces the extra adds up to more than "
        "can be eased in.",
    ),
    # --- cutters
    "cutter-shape-unknown": Entry(
        "error",
        "there is no cutter for `{name}`",
        "A cutter cuts squares, rectangles, half-square or quarter-square triangles, strips or diamonds.",
    ),
    "cutter-size": Entry(
        "error",
        "a cutter for `{shape}` has one size",
        "Only a rectangle needs two sizes.",
    ),
    # --- making
    "method-unknown": Entry(
        "error",
        "there is no method `{name}`",
        "The words after `as` must name a method of making a unit.",
    ),
    "method-does-not-fit": Entry(
        "error",
        "`{method}` cannot make {what}; it can be made as {can}",
        "Each method suits only certain units.",
    ),
    "nothing-to-make": Entry(
        "warning",
        "the block has no {what} to make",
        "The `make` line names a unit or shape that is not in the block.",
    ),
    "nothing-left-to-make": Entry(
        "error",
        "this line has nothing to make: each {what} is made by another line, {others}",
        "Two `make` lines name the same units, and the first makes them all.",
    ),
    "too-few-to-make": Entry(
        "error",
        "this line makes {count} of {what}, but {left}",
        "The `make` line asks for more units than the block has left.",
    ),
    "trim-without-method": Entry(
        "warning",
        "`trim` has no effect when every patch is cut by itself",
        "Trimming to size is for methods that sew first and cut afterwards.",
    ),
    "foundation-no-order": Entry(
        "error",
        "`{what}` cannot be sewn to a foundation: no straight seam runs right across {patches}",
        "On a foundation, each patch is added with one straight seam across all the patches before it.",
    ),
    "foundation-curved": Entry(
        "error",
        "`{what}` cannot be sewn to a foundation: it has curved seams",
        "On a foundation, each patch is sewn with a straight seam and folded over it; a curve does not fold flat.",
    ),
    "papers-curved": Entry(
        "error",
        "`{what}` cannot be sewn over papers: it has curved seams",
        "Pieces are folded over the straight edges of a paper; a curved allowance would have to be gathered.",
    ),
    "foundation-too-many": Entry(
        "error",
        "`{what}` has too many patches for a foundation",
        "A unit of this many patches must be divided into smaller units.",
    ),
    # --- books
    "book-without-blocks": Entry(
        "error",
        'the book "{name}" has no blocks',
        "A book needs at least one block.",
    ),
    "paper-unknown": Entry(
        "error",
        "there is no paper `{name}`",
        "A book is printed on a standard paper size, or on a roll.",
    ),
    # --- the maker's own ways
    "maker-twice": Entry(
        "error",
        "there are two makers: `{first}` and `{name}`",
        "A project has one maker; other files find her through `use`.",
    ),
    "pressing-unknown": Entry(
        "error",
        "seams cannot be pressed `{text}`",
        "Seams are pressed open, as they nest, or toward the darker fabric.",
    ),
    "language-unknown": Entry(
        "error",
        "pages cannot be printed in `{tag}`",
        "Sheets, books and sites can be printed only in the languages that blockdsl has.",
    ),
    "symmetry-unknown": Entry(
        "error",
        "a block cannot be symmetric `{text}`",
        "A block is symmetric by a quarter or half turn, left to right, or top to bottom.",
    ),
    "symmetry-broken": Entry(
        "warning",
        "the block would be the same {how} but for this cell",
        "All other cells have partners that look alike. A cell turned the wrong way is the commonest slip in drafting.",
    ),
    "link-not-web": Entry(
        "error",
        'no browser opens "{address}"',
        "A link is an address of the web, `https://` and all, as a browser shows it.",
    ),
    "picture-unreadable": Entry(
        "error",
        "`{path}` cannot be printed: {why}",
        "Pictures of pixels are JPEG or PNG files.",
    ),
    "accent-too-pale": Entry(
        "error",
        "words in {colour} cannot be read on white paper",
        "The accent of the pages stands out from the paper by 4.5 to 1 at least.",
    ),
    "foot-too-long": Entry(
        "error",
        "the foot of a page has no room for {what}: {letters} letters, and {most} fit",
        "What the maker prints at the foot of her pages stands in one row there.",
    ),
    # --- sewing
    "cannot-be-sewn": Entry(
        "error",
        "no piecing order was found: no seam separates the patches {letters}",
        "It must be possible to take a block apart seam by seam (straight, partial or set-in) down to single patches.",
    ),
    # --- cutting
    "grain-letter-unknown": Entry(
        "error",
        "the block has no patch {letter}",
        "A `grain` line names a patch by the letter that it has on the sheet.",
    ),
    "grain-given-twice": Entry(
        "error",
        "the grain of {letter} is given twice",
        "Two `grain` lines name the same letter.",
    ),
    "grain-without-choice": Entry(
        "error",
        "there is no choice of grain for {letter}, a {shape}",
        "A `grain` line is for patches whose long or short edges can be on the straight grain, but not both.",
    ),
    "directional-method": Entry(
        "warning",
        "made as `{method}`, the print of `{name}` is not upright in every {what}",
        "Some methods turn a directional print.",
    ),
    "directional-border": Entry(
        "warning",
        "the top and bottom of the {word} cannot be cut lengthwise from `{name}` with the print upright",
        "Only the sides of a border can be cut lengthwise from a directional print.",
    ),
    # --- printing
    "template-too-large": Entry(
        "warning",
        "no {what} are printed: {of} is longer than 200 in (508 cm)",
        "A PDF page can be at most 200 in long, and a template must fit on one before it is tiled.",
    ),
    "output-taken": Entry(
        "error",
        "{path} already comes from {other}",
        "Two files with the same title would overwrite each other's sheets, and the folder would hold those of the "
        "file built last.",
    ),
    # --- the designer's own checks
    "expect-cut": Entry(
        "error",
        "expected {wanted}, but the cutting list has {got}",
        "The `expect cut` line does not match the cutting list.",
    ),
    "expect-unit": Entry(
        "error",
        "expected {wanted}, but the block has {got}",
        "The `expect unit` line does not match the block.",
    ),
    "expect-symmetric": Entry(
        "error",
        "expected the same block {how}, but it is another",
        "The `expect symmetric` line does not match the block.",
    ),
    "expect-finished": Entry(
        "error",
        "expected {wanted} finished, but it is {got}",
        "The `expect finished` line does not match the block or the quilt.",
    ),
}
