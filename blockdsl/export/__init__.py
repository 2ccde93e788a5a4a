"""Sheets become bytes: one file for each format.

Takes:    pages of marks, tables of text, finished bytes.
Gives:    SVG, PDF, PNG, Markdown and CSV; files written whole or not at all.
Measures: points at real size, y downward, as given; it decides nothing.
Reports:  nothing; what no painter may paint raises Unprintable, a missing system library (for PNG) CairoMissing.
Does not know: blocks.

A tour: `pdf` binds pages (`pdf_page`, `pdf_text`, `pdf_structure`, `pdf_rights`, `pdf_objects`), `svg` draws one (with
`embedded` fonts), `png` asks `cairo_library` for its pixels, `tables` writes Markdown and CSV, `xlsx` spreadsheets,
`dxf` and `cut_svg` cut files, `html` sites. `printable` refuses what cannot be painted. `files` writes whole or not at
all, `output_folder` with a record of it (`written`, `recognised`), and `naming` makes names of files.
"""
