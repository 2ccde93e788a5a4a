# Books and sites: covers, contents, chapters, front pages, index, galleries.

book-subject = Pattern book of { $count }
book-to-sew = { $count } to cut and sew
book-contents = Contents
book-begin = To begin with
book-blocks = The blocks
book-chapter = Chapter { $number }
book-in-this-chapter = In this chapter
book-index = Index
book-test-page = Test page
book-techniques = Techniques
book-used-by = Used by { $blocks }
book-at-the-back = At the back
book-quilts = Quilts
book-quilt-size = quilt, { $size }
book-other-colorways = Other { -colorways }
book-elsewhere = Cutting and sewing one { $block }
book-read-first = Before the first cut, read what the sizes mean and how to take care
book-on-page = { $what }: page
book-other-sizes = The measures in the steps are for the { $size } block. The steps are the same for the other sizes; their measures are listed with the units.
book-templates = Pieces marked “by template” are cut around full-size templates, printed from a separate file for each size: the test square on them must measure 1 in. The sizes listed here are the fabric that each one takes.
index-title = Blocks by name, size, family{ -serial } and patches
index-by-name = By name
index-by-size = By finished size
index-by-family = By family
index-by-patches = By number of patches
index-caption = All blocks by name
index-head-block = block
index-head-finished = finished
index-head-patches = patches
index-head-fabrics = fabrics
site-block-line = { $sizes }; { $patches }, { $fabrics }
site-quilt-line = quilt, { $size }; { $blocks }
site-sizes = Sizes
site-at-size = { $size } finished
site-skip = Skip to the contents of this page
site-before = Previous
site-next = Next
site-turn = Previous and next pages
site-done = done: { $what }
site-enlarge = Enlarge this picture
site-choose-size = Finished size
site-search = Search
site-find = Words to look for
site-found = Pages found:
site-lesson = Lesson: { $lesson }
site-used-by = Blocks and quilts that use it
site-print = To print
site-pdf-sheet = Pattern sheet (PDF)
site-pdf-templates = Templates, { $size } (PDF)
site-pdf-foundation = Foundation papers, { $size } (PDF)
site-pdf-papers = Papers, { $size } (PDF)
gallery-subject = Contact sheet of { $blocks }
gallery-by-family = { $blocks }, by family
gallery-line = { $size }; { $patches }

# --- a page of possibilities -----------------------------------------------------------------------

possible-title = Settings for { $block }
possible-subject = One block in { $quilts }
possible-under = { $quilts }, the least alike first
possible-about = The lines under a quilt are its setting: put them below a line that names your quilt. How much of each fabric to buy is estimated for the top alone, and may be a little more than the plan for cutting needs.
possible-name = { $number }. { $setting }
possible-turned = some blocks turned
possible-colorway = with some in { $colorway }
possible-plain = with plain squares of { $fabric }
possible-sashing = with sashing
possible-posts = with sashing and cornerstones
possible-size = { $size }; { $blocks }
possible-cloth = { $fabric } { $buy }

# --- lessons ---------------------------------------------------------------------------------------

sign-right-side = right side
sign-wrong-side = wrong side
sign-pencil-line = pencil line
sign-seam = seam
sign-cut = cut
sign-press = press this way
hand-right = right-handed
hand-left = left-handed

# --- before you begin ------------------------------------------------------------------------------

begin-title = Before you begin
begin-reading = Reading the pages
begin-reading-pictures = Every block begins with its pictures: the block in { -color }, and a lettered diagram in which each patch has its letter. Patches with the same letter have the same shape and size; an r after it marks a mirror image.
begin-reading-cutting = The cutting table lists, fabric by fabric, how many pieces to cut and how large. Where the book gives a block in several sizes, each has its own column: choose one, and stay in its column.
begin-reading-units = Below it are the units to make, with the size each should measure before you join it. Measuring as you go is quicker than unpicking.
begin-reading-quilts = A quilt begins with what to buy and what to cut from each fabric for the whole quilt, drawn strip by strip. Then come the number of each block to make, how to assemble the top, what it should measure along the way, and how to finish it.
begin-printing = Printing
begin-printing-size = Print at actual size, 100 %, never fitted to the page. The test page at the end of the book, page { $page }, shows whether your printer did: print that page first and measure it with the ruler you cut with.
begin-printing-scale = Tables and pictures can be printed at any scale. Templates cannot.
begin-first = One block first
begin-first-words = Cut and sew one block before you cut for a whole quilt. Fabric stretches, most of all on the bias, and everyone sews and presses a little differently: one block shows it while there is still fabric to spare.

# The cautions in full, once in a book.
caution-cutter = The cutter
    .words = A rotary cutter is as sharp as a razor. Close its blade each time you put it down, even for a moment; cut away from yourself, on a mat made for it, with your fingers behind the ruler's edge; change a blade that skips rather than pressing harder, and wrap the old one before you throw it away.
caution-iron = The iron
    .words = Keep hands, hair{ -serial } and the cord clear of the soleplate, mind the steam, and stand the iron on its heel or its rest. Switch it off and let it cool when you leave the table. Try its heat on a scrap first.
caution-needles = Needles and pins
    .words = Count pins and needles in and out, and sweep the floor with a magnet at the end of the day; keep magnets away from children and from pacemakers. Do not sew over pins; keep your fingers clear of a moving needle, and switch the machine off before you change one.
caution-others = Those around you
    .words = Keep cutters, pins, cords{ -serial } and hot irons out of the reach of children and pets. Work in good light, sit comfortably, and stop when you are tired: that is when fingers are cut.
caution-tools = Tools and rules
    .words = Follow the instructions that came with your tools and machines; where they differ from this book, they come first. So do the rules for workshops and schools where you live.
