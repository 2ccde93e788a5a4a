"""Every problem that blockdsl can report: its code, how grave it is, and what it says.

A new problem is one entry here and one page in tests/spec/problems.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Severity = Literal["error", "warning"]


@dataclass(frozen=True, slots=True)
class Entry:
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
        "A block file is a page or two of notes; one over 1 MiB is refused before it is read.",
    ),
    "too-many-mistakes": Entry(
        "error",
        "more than 100 lines cannot be read; the rest of the file was not looked at",
        "A file with this many faults is most likely not a block file.",
    ),
    "letter-not-in-font": Entry(
        "warning",
        "the font of the pages has no {letters}",
        "Letters that the font lacks are printed as empty boxes.",
    ),
    "font-unreadable": Entry(
        "error",
        "{path} is not a font",
        "The maker's own font is a file with letters in it, TrueType or OpenType.",
    ),
    "control-character": Entry(
        "error",
        "there is an invisible control character ({name}) here",
        "A character that cannot be seen or printed stands among the words.",
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
        "A colour has too few or too many digits, or a letter that is not a digit.",
    ),
    "quote-not-closed": Entry(
        "error",
        "the quotation mark is not closed",
        "Quoted text begins here and the line ends before its closing mark.",
    ),
    "bracket-not-closed": Entry(
        "error",
        "the bracket is not closed",
        "A shape in brackets begins here and the line ends before its closing bracket.",
    ),
    "bracket-not-opened": Entry(
        "error",
        "the bracket closes nothing",
        "There is a closing bracket without an opening one.",
    ),
    "bracket-inside-bracket": Entry(
        "error",
        "a shape cannot stand inside another shape",
        "A shape's words are fabrics and numbers; a shape within a shape needs a unit of its own.",
    ),
    "nesting-too-deep": Entry(
        "error",
        "things are nested more than 32 deep here",
        "Brackets, or units made of units, go deeper than 32 levels.",
    ),
    "turn-apart": Entry(
        "error",
        "the turn `{turn}` stands apart from its cell",
        "Turns are written straight after the cell, without a space.",
    ),
    "pair-apart": Entry(
        "error",
        "the `{slope}` of a pair stands apart from its fabrics",
        "A pair of triangles is written without spaces, so that it reads as one cell.",
    ),
    "name-needs-letter": Entry(
        "error",
        "`{name}` is not a name: a name starts with a letter",
        "A fabric or unit has a name that begins with a digit or a sign.",
    ),
    "number-over-zero": Entry(
        "error",
        "`{text}` divides by nothing",
        "A fraction has 0 below its line.",
    ),
    "number-too-long": Entry(
        "error",
        "the number has too many digits",
        "A number of more than 30 digits is a slip of the hand.",
    ),
    "length-needs-unit": Entry(
        "error",
        "`{text}` does not say inches or centimetres",
        "A length is a number and its unit: `in`, `cm` or `mm`.",
    ),
    "fabric-label-missing": Entry(
        "error",
        "the fabric `{name}` has no label",
        "A fabric needs the words that are printed for it, in quotation marks.",
    ),
    "fabric-colour-missing": Entry(
        "error",
        "the fabric `{name}` has no colour",
        "A fabric needs a colour, so that it can be drawn.",
    ),
    "words-empty": Entry(
        "error",
        "there are no words between the quotation marks",
        "A title, a label or a note is printed, and has at least one letter.",
    ),
    "row-empty": Entry(
        "error",
        "the row has no cells",
        "A `row` line names at least one fabric, unit or shape.",
    ),
    "line-ends-early": Entry(
        "error",
        "the line ends too early: {wanted} should follow",
        "Something that this kind of line needs is missing at its end.",
    ),
    "word-unexpected": Entry(
        "error",
        "`{found}` is not understood here; {wanted} should come next",
        "A word or sign stands where this kind of line needs something else.",
    ),
    # --- lines and declarations
    "line-unknown": Entry(
        "error",
        "no line begins with `{word}`",
        "The first word of a line says what kind of line it is; this one is not known.",
    ),
    "word-renamed": Entry(
        "error",
        "`{word}` is now called `{now}`",
        "A word of the language has been replaced by the one that quilters use.",
    ),
    "line-outside-declaration": Entry(
        "error",
        "the `{keyword}` line belongs to nothing",
        "Lines such as `row` and `size` belong to the unit or block above them; here there is none.",
    ),
    "line-does-not-belong": Entry(
        "error",
        "a `{keyword}` line does not belong in {place}",
        "Some lines belong in a block only; a unit, for example, has no size of its own.",
    ),
    # --- quilts
    "quilt-without-blocks": Entry(
        "error",
        'nothing says how the blocks of "{name}" are set',
        "A quilt has a `set` line, or rows that name its blocks.",
    ),
    "blocks-differ-in-size": Entry(
        "error",
        '"{one}" is {size} and "{other}" is {else_size}: they do not fit into one setting',
        "All blocks of a setting have the same finished size.",
    ),
    "block-does-not-fit": Entry(
        "error",
        '"{name}" does not fit into this setting: {why}',
        "An oblong block cannot stand on point or lie across its place; curves and appliqué are not cut in two.",
    ),
    "fill-missing": Entry(
        "error",
        "nothing says what fabric {wanted} are",
        "Blocks on point need setting triangles, and a strippy quilt needs strips.",
    ),
    "sash-too-wide": Entry(
        "error",
        "a sash of {width} leaves nothing of the half blocks",
        "In dropped columns a half block is half of what a block is higher than a sash.",
    ),
    "border-too-wide": Entry(
        "error",
        "a {word} of {width} is wider than the quilt that it is sewn round",
        "A border is narrower than what is inside it; wider ones are a slip of the hand.",
    ),
    "border-does-not-divide": Entry(
        "error",
        "units of {length} do not come out even along {sides}",
        "A pieced border is a whole number of units on every side.",
    ),
    "border-corners": Entry(
        "error",
        "{what}",
        "The corners of a border are butted, mitred or squares, and those of a pieced one are never mitred.",
    ),
    "too-many-blocks": Entry(
        "error",
        "{found} blocks are more than one quilt can have",
        "A quilt has at most 10,000 blocks.",
    ),
    "count-not-whole": Entry(
        "error",
        "a {what} of {number} is not a whole number",
        "Blocks and fat quarters are counted in whole numbers.",
    ),
    "setting-fixed": Entry(
        "error",
        "this quilt cannot be set in another way: {why}",
        "Another setting is asked for from outside, of a quilt whose lines leave no choice.",
    ),
    "line-idle": Entry(
        "warning",
        "`{what}` changes nothing here: {why}",
        "A line of a quilt has no effect in its setting; most likely something else was meant.",
    ),
    "prints-too-few": Entry(
        "warning",
        "{pairs} of blocks side by side have the same print of `{name}` from {prints}; {least}",
        "Blocks side by side have the same print, because there are too few prints to keep them apart.",
    ),
    "fat-quarters-too-few": Entry(
        "warning",
        "the fat quarters do not give all the `{name}`: {what}",
        "So many fat quarters are not enough for the blocks that are to be cut from them.",
    ),
    "quilt-off-ruler": Entry(
        "warning",
        "{what} of {length} does not fall on the marks of a ruler that reads {measure}",
        "Strips and half blocks between the ruler's marks are cut to the next one, and sew up too large.",
    ),
    "expect-blocks": Entry(
        "error",
        'expected {wanted} blocks of "{name}", but the quilt has {got}',
        "An `expect blocks` line does not agree with the quilt.",
    ),
    # --- names
    "name-unknown": Entry(
        "error",
        "there is no {kind} `{name}`",
        "A word in a cell or a setting names nothing that is declared.",
    ),
    "name-twice": Entry(
        "error",
        "there is already a {kind} `{name}`",
        "Two declarations have the same name, so that a cell could mean either.",
    ),
    "value-unknown": Entry(
        "error",
        "`{name}` is not a value: say `light`, `medium` or `dark`",
        "The value of a fabric is one of three words.",
    ),
    "setting-twice": Entry(
        "error",
        "`{what}` is said twice",
        "A setting that can hold only once, such as `size`, stands twice in one declaration.",
    ),
    "fabric-unused": Entry(
        "warning",
        "the fabric `{name}` is not used",
        "A fabric is declared and no cell, unit or colourway uses it.",
    ),
    "setting-too-large": Entry(
        "error",
        "a {what} this large cannot be meant",
        "A seam allowance, a trim or a ruler's measure is far larger than any that is used.",
    ),
    "piece-wider-than-fabric": Entry(
        "warning",
        "{piece} cannot be cut from `{name}`: {width} of its width can be used",
        "A piece is wider than its fabric, whichever way it is laid.",
    ),
    "brought-in-twice": Entry(
        "warning",
        "`{one}` and `{other}` both bring in {names}; what comes last stands",
        "Two files that are used declare the same name, and one of the two gives way.",
    ),
    "colourway-idle": Entry(
        "warning",
        "the block does not use `{name}`, so this colourway changes nothing there",
        "A colourway replaces a fabric that the block does not have.",
    ),
    "colourway-merges": Entry(
        "warning",
        "in the colourway `{name}` `{one}` and `{other}` are both `{becomes}`, and they lie side by side",
        "A colourway gives two neighbours the same fabric, so that they look like one patch.",
    ),
    "contrast-low": Entry(
        "warning",
        "`{one}` and `{other}` are hard to tell apart",
        "Two fabrics that touch have colours so near each other that the pattern is lost.",
    ),
    # --- other files
    "use-missing": Entry(
        "error",
        'there is no file "{path}"',
        "A `use` or `text` line names a file that is not there.",
    ),
    "use-cycle": Entry(
        "error",
        '"{path}" is used from within itself',
        "Files that use each other in a ring can never be read to the end.",
    ),
    "use-leaves-project": Entry(
        "error",
        '"{path}" lies outside the project folder',
        "A `use` or `text` line may not reach out of the folder of the project.",
    ),
    "library-unknown": Entry(
        "error",
        'there is no library "{name}"',
        "The name after `use library` is not one of the libraries that come with blockdsl.",
    ),
    # --- shapes and units
    "shape-unknown": Entry(
        "error",
        "there is no shape `{name}`",
        "The first word in brackets, or after `unit NAME =`, is a shape of the language.",
    ),
    "shape-needs-brackets": Entry(
        "error",
        "the shape `{name}` has no brackets round it",
        "A shape in a row stands in brackets with its words, so that it is seen to be one cell.",
    ),
    "shape-words": Entry(
        "error",
        "the words do not fit the shape `{shape}`; it is written `{usage}`",
        "Each shape reads its own words in its own order.",
    ),
    "unit-does-not-fit": Entry(
        "error",
        "`{name}` is {wants} wide to high, but its place is {gets}",
        "A unit can grow or shrink to fill its cell, but never be stretched.",
    ),
    "unit-cycle": Entry(
        "error",
        "the unit `{name}` is made of itself",
        "A unit that contains itself could never be finished.",
    ),
    # --- the grid
    "rows-missing": Entry(
        "error",
        "the {kind} `{name}` has no rows",
        "A block or unit needs rows, free patches or, for a unit, a shape.",
    ),
    "row-too-long": Entry(
        "error",
        "the row has {found}; the first row has {wanted}",
        "All rows of a unit or block have as many cells.",
    ),
    "row-too-short": Entry(
        "error",
        "the row has {found}; the first row has {wanted}",
        "All rows of a unit or block have as many cells.",
    ),
    "columns-do-not-match": Entry(
        "error",
        "`columns` gives {found} widths; the rows have {wanted} cells",
        "There is one relative width for each cell of a row.",
    ),
    "heights-do-not-match": Entry(
        "error",
        "`heights` gives {found} heights; there are {wanted} rows",
        "There is one relative height for each row.",
    ),
    "nothing-to-continue": Entry(
        "error",
        "there is no cell {where} to go on with",
        "`-` goes on with the cell on its left and `|` with the cell above; here there is none.",
    ),
    "continue-not-rectangular": Entry(
        "error",
        "the cell goes on in a form that is not a rectangle",
        "A cell over several places must fill a rectangle of them.",
    ),
    "grid-mixed": Entry(
        "error",
        "rows and free patches stand in one declaration",
        "A unit or block is drawn in rows or in free patches, not both.",
    ),
    "too-many-cells": Entry(
        "error",
        "the grid has more than 200 by 200 cells",
        "More than 200 rows or columns are refused.",
    ),
    "too-many-patches": Entry(
        "error",
        "there are more than 100,000 patches",
        "A block of more than 100,000 patches is refused.",
    ),
    "grid-too-fine": Entry(
        "error",
        "the {what} fall on no common grid that squared paper could show",
        "Columns, rows and corners lie on one even grid; numbers of very many digits have none that can be drawn.",
    ),
    "too-many-units": Entry(
        "error",
        "there are more than 100,000 units",
        "A block of more than 100,000 units, those within other units counted, is refused.",
    ),
    # --- free patches
    "patches-overlap": Entry(
        "error",
        "patches overlap: {patches} share {area}, near {place}",
        "Two patches lie over each other, so that they could not be sewn flat.",
    ),
    "applique-path": Entry(
        "error",
        "the outline of this appliqué cannot be followed: {why}",
        "An appliqué piece is one closed outline, drawn with the path commands of SVG in the squares of the grid.",
    ),
    "applique-outside": Entry(
        "error",
        "this appliqué reaches beyond the block or unit that it is drawn in",
        "A piece that hangs over the edge would be caught in the next seam.",
    ),
    "turn-under-odd": Entry(
        "error",
        "nobody turns {length} under",
        "The allowance of an appliqué piece is folded under its edge; more than an inch would not lie flat.",
    ),
    "curve-too-tight": Entry(
        "error",
        "the curve of `{name}` is too tight to be sewn: its radius is {radius}",
        "A hollow edge needs a radius of more than twice the seam allowance, or its own allowance closes it up.",
    ),
    "patches-leave-gap": Entry(
        "error",
        "the patches leave a gap of {area}, near {place}",
        "Part of the grid is covered by no patch: there would be a hole.",
    ),
    "patch-outside": Entry(
        "error",
        "{area} of the patch lies outside the grid, near {place}",
        "A patch reaches over the edge of its grid.",
    ),
    "patch-not-simple": Entry(
        "error",
        "the edge of the patch crosses itself",
        "The corners of a patch go round it once, in order, without crossing.",
    ),
    "patch-too-few-corners": Entry(
        "error",
        "the patch has fewer than three corners",
        "A patch needs three different corners or more, not all in one line.",
    ),
    # --- sizes
    "size-missing": Entry(
        "error",
        'the block "{name}" has no size',
        "A block needs its finished size before anything can be cut.",
    ),
    "size-too-oblong": Entry(
        "error",
        "a block of this size would be a ribbon",
        "A block more than a thousand times as long as it is wide cannot be drawn so that anything is seen of it.",
    ),
    "size-too-large": Entry(
        "error",
        "the size is more than 10 m",
        "Sizes over 10 m are refused.",
    ),
    "length-not-positive": Entry(
        "error",
        "the {what} must be more than nothing",
        "A length or a count of 0 cannot be cut.",
    ),
    "units-mixed": Entry(
        "error",
        "inches and centimetres are mixed",
        "One block is measured in inches or in centimetres throughout.",
    ),
    "size-off-ruler": Entry(
        "warning",
        "a cell of {cell} does not fall on the marks of a ruler that reads {measure}",
        "Finished sizes between the ruler's marks cannot be cut exactly.",
    ),
    "rounding-adds-up": Entry(
        "warning",
        "rounding to {measure} adds up: {what}, so seams end up more than {off} out of place",
        "Cut sizes are rounded up to the ruler's marks. Along a row of slanted pieces that adds up to more than a seam "
        "can ease in.",
    ),
    # --- cutters
    "cutter-shape-unknown": Entry(
        "error",
        "no cutter cuts `{name}`",
        "A cutter cuts squares, rectangles, half-square or quarter-square triangles, strips or diamonds.",
    ),
    "cutter-size": Entry(
        "error",
        "a cutter for `{shape}` has one measure",
        "Only rectangles have two measures; everything else that a cutter cuts is told by one.",
    ),
    # --- making
    "method-unknown": Entry(
        "error",
        "there is no method `{name}`",
        "The words after `as` are one of the ways of making a unit.",
    ),
    "method-does-not-fit": Entry(
        "error",
        "`{method}` cannot make {what}; it can be made as {can}",
        "Each way of making suits certain units only.",
    ),
    "nothing-to-make": Entry(
        "warning",
        "the block has no {what} to make",
        "A `make` line speaks of a unit or shape that the block does not have.",
    ),
    "nothing-left-to-make": Entry(
        "error",
        "this line makes nothing: each {what} is made by another line, {others}",
        "Two `make` lines speak of the same units, and the first of them makes them all.",
    ),
    "too-few-to-make": Entry(
        "error",
        "this line makes {count} of {what}, but {left}",
        "A `make` line with a number asks for more units than the block has left for it.",
    ),
    "trim-without-method": Entry(
        "warning",
        "`trim` does nothing when every patch is cut by itself",
        "Trimming down belongs to the methods that sew first and cut afterwards.",
    ),
    "foundation-no-order": Entry(
        "error",
        "`{what}` cannot be sewn to a foundation: no straight seam runs right across {patches}",
        "On a paper each patch is sewn to those before it by one straight seam right across; here there is none.",
    ),
    "foundation-curved": Entry(
        "error",
        "`{what}` cannot be sewn to a foundation: it has curved seams",
        "On a paper each patch is sewn by one straight seam and folded over it; a curve cannot be folded flat.",
    ),
    "papers-curved": Entry(
        "error",
        "`{what}` cannot be sewn over papers: it has curved seams",
        "A piece is folded round a paper edge by edge; along a curve its allowance would have to be gathered.",
    ),
    "foundation-too-many": Entry(
        "error",
        "`{what}` has too many patches for a foundation",
        "A unit of very many patches is not sewn to papers; smaller units of it are.",
    ),
    # --- books
    "book-without-blocks": Entry(
        "error",
        'the book "{name}" has no blocks',
        "A book prints at least one block.",
    ),
    "paper-unknown": Entry(
        "error",
        "there is no paper `{name}`",
        "A book is printed on one of the papers that blockdsl knows, or on a roll of a width that printers have.",
    ),
    # --- the maker's own ways
    "maker-twice": Entry(
        "error",
        "a second maker: `{name}` stands beside `{first}`",
        "A project has one maker; what the files that it uses say of her is found through `use`.",
    ),
    "pressing-unknown": Entry(
        "error",
        "no seam is pressed `{text}`",
        "Seams are pressed open, as they nest, or toward the darker fabric.",
    ),
    "language-unknown": Entry(
        "error",
        "pages cannot be in `{tag}`",
        "Sheets, books and sites are printed in one of the languages that blockdsl has all the words of.",
    ),
    # --- sewing
    "cannot-be-sewn": Entry(
        "error",
        "no order of sewing was found: no seam parts the patches {letters}",
        "A block must come apart seam by seam, straight, partial or set in, down to single patches.",
    ),
    # --- cutting
    "grain-letter-unknown": Entry(
        "error",
        "the block has no patch {letter}",
        "A `grain` line names a patch by its letter, as the sheet shows it.",
    ),
    "grain-said-twice": Entry(
        "error",
        "the grain of {letter} is said twice",
        "Two `grain` lines speak of the same letter.",
    ),
    "grain-without-choice": Entry(
        "error",
        "the grain of {letter}, a {shape}, leaves nothing to choose",
        "A `grain` line is for patches of which either the long or the short edges can be kept straight, not both.",
    ),
    "directional-method": Entry(
        "warning",
        "made as `{method}`, not every {what} has the print of `{name}` upright",
        "Cloth with an up and a down is turned by some methods of sewing.",
    ),
    "directional-border": Entry(
        "warning",
        "top and bottom of the {word} cannot be cut along the length of `{name}` and have its print upright",
        "A border is to be cut along the length of a fabric with an up and a down, which only its sides can be.",
    ),
    # --- printing
    "template-too-large": Entry(
        "warning",
        "no {what} are printed: {of} is longer than 200 in (508 cm)",
        "A page of a PDF is 200 in long at the most, and a template must fit one page before it is cut into tiles.",
    ),
    "output-taken": Entry(
        "error",
        "{path} is already made from {other}",
        "Two files with one title would write over each other's sheets in turn, and what lies in the folder would "
        "depend on which was built last.",
    ),
    # --- the designer's own checks
    "expect-cut": Entry(
        "error",
        "expected {wanted}, but the cutting list has {got}",
        "The `expect cut` line does not agree with the cutting list.",
    ),
    "expect-unit": Entry(
        "error",
        "expected {wanted}, but the block has {got}",
        "The `expect unit` line does not agree with the block.",
    ),
    "expect-finished": Entry(
        "error",
        "expected {wanted} finished, but it is {got}",
        "The `expect finished` line does not agree with the block or the quilt.",
    ),
}
