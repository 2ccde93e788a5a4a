"""All the numbers of a file as plain data.

Takes:    the program, its making and its cuts.
Gives:    `FileFacts` with a `BlockFacts` for each block, a `QuiltFacts` for each quilt and a `BookFacts` for each book;
          the same as JSON, schema 2. Each field is written once, in a record (`blockdsl/record.py`): that is its name
          in the JSON, its entry in the schema and its description there.
Measures: as given, exact.
Reports:  the designer's own checks (`expect`) that do not hold.
Does not know: drawing.

`blockrecord`, `stepfacts`, `foundationfacts` and `quiltrecord` have the records; `collect` makes them, `sewn` and
`finishing` find steps and cloth when they are first asked for, and `document` puts all of it together as JSON.
"""

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.facts.bookfacts import BookBlockFacts, BookFacts, ChapterFacts, WordsFacts, book_of
from blockdsl.facts.collect import FileFacts, collect_facts
from blockdsl.facts.quiltfacts import QuiltFacts

__all__ = [
    "BlockFacts",
    "BookBlockFacts",
    "BookFacts",
    "ChapterFacts",
    "FileFacts",
    "QuiltFacts",
    "WordsFacts",
    "book_of",
    "collect_facts",
]
