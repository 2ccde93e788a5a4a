"""From what a file says to what it means.

Takes:    a parsed file, and a reader for the files that it uses.
Gives:    a `Program`: the file's fabrics and its blocks, placed, turned and proved to be covered.
Measures: exact inches or centimetres, finished.
Reports:  mistakes of meaning: unknown names, cells that do not fit, gaps and overlaps.
Does not know: seams sewn, paper.
"""

from blockdsl.analysis.program import Program, analyse
from blockdsl.analysis.reading import FileReader, Reader, TextReader

__all__ = ["FileReader", "Program", "Reader", "TextReader", "analyse"]
