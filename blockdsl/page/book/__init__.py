"""A pattern book: `book` binds covers, contents, chapters, blocks, quilts, lessons, glossary and indexes."""
