"""Web sites as files: pages that can be read without scripts, a style sheet, the fonts, and nothing from elsewhere.

Takes:    a site of pages of parts.
Gives:    the bytes of each file by its name.
Measures: nothing; pictures keep the proportions of their pages.
Reports:  nothing; words that no file may hold raise Unprintable.
Does not know: blocks, fabrics, sizes.
"""

from blockdsl.export.html.site import site_files

__all__ = ["site_files"]
